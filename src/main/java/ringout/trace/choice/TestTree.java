package ringout.trace.choice;

import java.util.List;
import ringout.trace.choice.Advice.Ask;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Reading;

/**
 * The advice for every outcome some tests deep, for paper.
 *
 * @param advice what to do here
 * @param limbs what follows from each outcome; none where the advice is no test, or where the paper ends
 */
public record TestTree(Advice advice, List<Limb> limbs) {
    /**
     * What follows from an outcome.
     *
     * @param outcome number of the outcome
     * @param chance of it where it stands in the tree
     * @param then what to do after it
     */
    public record Limb(int outcome, double chance, TestTree then) {}

    /** Keeps its own copy. */
    public TestTree {
        limbs = List.copyOf(limbs);
    }

    /** Grows a tree with at most so many tests on any way down; below the last stands what would come next. */
    public static TestTree grow(Adviser adviser, Observed observed, int tests) {
        Advice advice = adviser.next(observed);
        if (!(advice instanceof Ask ask) || tests == 0) {
            return new TestTree(advice, List.of());
        }
        Problem problem = adviser.problem();
        List<Limb> limbs = ask.branches().stream()
                .map(branch -> {
                    Observed then = observed.with(problem, new Reading(ask.question(), branch.outcome()));
                    return new Limb(branch.outcome(), branch.chance(), grow(adviser, then, tests - 1));
                })
                .toList();
        return new TestTree(advice, limbs);
    }

    /** Number of tests in the tree. */
    public int size() {
        boolean test = advice instanceof Ask && !limbs.isEmpty();
        return (test ? 1 : 0)
                + limbs.stream().mapToInt(limb -> limb.then().size()).sum();
    }
}
