package ringout.trace.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.trace.diagnosis.RepairShare;

/**
 * Where a search stands, as it is told.
 *
 * @param aircraft name of the aircraft
 * @param state state of the aircraft
 * @param scene what is seen
 * @param alive units that respond
 * @param behind units that are commanded through a silent one and cannot be heard while it is silent
 * @param lookAt units nothing is told of that some fault would silence or unsettle too
 * @param ways what the silent units hang on
 * @param single whether one fault explains all that is seen
 * @param progress what was done: readings, lids that are off, tests left out, repairs in vain
 * @param ranked faults that may be present, likeliest first
 * @param others how many more were kept below the share that is told
 * @param unknown share of something not in the model
 * @param bits uncertainty left
 * @param jobs repair actions, likeliest first
 * @param next what to do
 * @param pairs two faults at once, when no single one explains everything
 * @param listDoubts rows of the list that may be wrong instead of the aircraft
 * @param retest what to prove again after the likeliest repair
 */
public record FaultReport(
        String aircraft,
        String state,
        Scene scene,
        List<String> alive,
        List<String> behind,
        List<String> lookAt,
        List<Way> ways,
        boolean single,
        Progress progress,
        List<Ranked> ranked,
        int others,
        double unknown,
        double bits,
        List<NextStep.Job> jobs,
        NextStep next,
        PairOffer pairs,
        List<ListDoubt> listDoubts,
        List<Retest> retest) {
    /** Faults below this share are counted, not told. */
    private static final double TOLD = 0.01;

    private static final int MOST_JOBS = 6;

    /** Keeps its own copies. */
    public FaultReport {
        alive = List.copyOf(alive);
        behind = List.copyOf(behind);
        lookAt = List.copyOf(lookAt);
        ways = List.copyOf(ways);
        ranked = List.copyOf(ranked);
        jobs = List.copyOf(jobs);
        listDoubts = List.copyOf(listDoubts);
        retest = List.copyOf(retest);
    }

    /** The report of a search. */
    public static FaultReport of(Diagnosis search) {
        Steps steps = new Steps(search);
        List<Ranked> ranked = steps.ranking(TOLD);
        List<RepairShare> repairs = search.repairs();
        List<Way> ways = new ArrayList<>();
        search.scene().silent().forEach(unit -> ways.addAll(Way.of(search.circuit(), unit)));
        PairOffer pairs = search.pairs();
        return new FaultReport(
                search.circuit().wiring().aircraft().name(),
                search.circuit().state().name(),
                search.scene(),
                List.copyOf(search.alive()),
                List.copyOf(search.behind()),
                lookAt(steps, search),
                ways,
                search.single(),
                search.progress(),
                ranked,
                search.suspects().size() - ranked.size(),
                search.belief().unknown(),
                search.belief().bits(),
                repairs.stream()
                        .filter(one -> one.share() >= TOLD)
                        .limit(MOST_JOBS)
                        .map(steps::job)
                        .toList(),
                steps.of(search.next()),
                pairs,
                ListDoubt.of(search, ranked, pairs),
                Retest.of(search, steps.likeliest(repairs.get(0))));
    }

    /** What to do next alone, quicker than the whole report. */
    public static NextStep next(Diagnosis search) {
        return new Steps(search).of(search.next());
    }

    private static List<String> lookAt(Steps steps, Diagnosis search) {
        if (search.scene().others() == Scene.Others.RESPOND) {
            return List.of();
        }
        Set<String> units = new TreeSet<>();
        for (Ranked one : steps.ranking(0)) {
            units.addAll(one.alsoSilent());
            units.addAll(one.alsoUnsteady());
        }
        units.removeAll(search.behind());
        return List.copyOf(units);
    }
}
