package ringout.trace.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Where a search stands and what follows from each outcome, some tests deep: for paper and for a page that only looks up.
 *
 * @param ranked faults that may be present, likeliest first
 * @param unknown share of something not in the model
 * @param next what to do
 * @param limbs what follows from each outcome; none where no test is advised, or where the tree ends
 * @param retest what to prove again after the likeliest repair; told where the search ends
 */
public record DialogueTree(List<Ranked> ranked, double unknown, NextStep next, List<Limb> limbs, List<Retest> retest) {
    /** Faults below this share are not told. */
    private static final double TOLD = 0.01;

    /**
     * What follows from an outcome.
     *
     * @param outcome the outcome
     * @param then where the search stands then
     */
    public record Limb(String outcome, DialogueTree then) {}

    /** Keeps its own copies. */
    public DialogueTree {
        ranked = List.copyOf(ranked);
        limbs = List.copyOf(limbs);
        retest = List.copyOf(retest);
    }

    /**
     * Grows a tree.
     *
     * @param search where it begins
     * @param tests at most so many on any way down; below the last stands what would come next
     * @param least ways that are come to less often than this, 0 to 1, are not followed further
     */
    public static DialogueTree grow(Diagnosis search, int tests, double least) {
        return grow(search, tests, least, 1);
    }

    private static DialogueTree grow(Diagnosis search, int tests, double least, double chance) {
        Steps steps = new Steps(search);
        NextStep next = steps.of(search.next());
        List<Limb> limbs = new ArrayList<>();
        if (next instanceof NextStep.Test test && tests > 0 && chance >= least) {
            for (NextStep.Branch branch : test.branches()) {
                Diagnosis then = search.with(test.card().id(), branch.outcome());
                limbs.add(new Limb(branch.outcome(), grow(then, tests - 1, least, chance * branch.chance())));
            }
        }
        boolean repair = !(next instanceof NextStep.Test || next instanceof NextStep.NothingFits);
        List<Retest> retest =
                repair ? Retest.of(search, steps.likeliest(search.repairs().get(0))) : List.of();
        List<Ranked> ranked = steps.ranking(TOLD).stream()
                .map(one -> aside(one, search.behind()))
                .toList();
        return new DialogueTree(ranked, search.belief().unknown(), next, limbs, retest);
    }

    /** A unit commanded through a silent one is not heard whatever the fault: that tells nothing. */
    private static Ranked aside(Ranked one, Set<String> behind) {
        return new Ranked(
                one.candidate(),
                one.share(),
                Names.without(one.alsoSilent(), behind, Set.of()),
                Names.without(one.alsoUnsteady(), behind, Set.of()),
                one.misfits());
    }
}
