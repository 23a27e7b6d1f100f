package ringout.trace.session;

import java.util.List;

/**
 * What to do for every outcome, some tests deep, for paper.
 *
 * @param step what to do here
 * @param limbs what follows from each outcome of a test; none where the step is no test, or where the paper ends
 */
public record SearchTree(NextStep step, List<Limb> limbs) {
    /**
     * What follows from an outcome.
     *
     * @param outcome one of the test
     * @param chance of it where it stands in the tree
     * @param then what to do after it
     */
    public record Limb(String outcome, double chance, SearchTree then) {}

    /** Keeps its own copy. */
    public SearchTree {
        limbs = List.copyOf(limbs);
    }

    /**
     * Grows a tree.
     *
     * @param tests at most so many tests on any way down; below the last stands what would come next
     * @param least outcomes less likely than this are not followed
     */
    public static SearchTree grow(Diagnosis search, int tests, double least) {
        NextStep step = FaultReport.next(search);
        if (!(step instanceof NextStep.Test test) || tests == 0) {
            return new SearchTree(step, List.of());
        }
        List<Limb> limbs = test.branches().stream()
                .filter(branch -> branch.chance() >= least)
                .map(branch -> new Limb(
                        branch.outcome(),
                        branch.chance(),
                        grow(search.with(test.card().id(), branch.outcome()), tests - 1, least)))
                .toList();
        return new SearchTree(step, limbs);
    }
}
