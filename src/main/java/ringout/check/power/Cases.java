package ringout.check.power;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.model.Event;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;
import ringout.solve.power.PowerFlow;

/**
 * The cases of loads a unit is judged in: all at their average, each declared event, and the unit alone at its peak.
 */
final class Cases {
    private final Situation at;
    private final PackCharge charge;
    private final List<Event> events;
    private final List<Broken> brokenPeaks = new ArrayList<>();

    Cases(Situation at, PackCharge charge) {
        this.at = at;
        this.charge = charge;
        this.events = at.aircraft().events();
    }

    /**
     * One case, solved.
     *
     * @param words the case in words
     * @param lasting it goes on for longer than a few seconds, or nobody says how long
     * @param flow what flows
     */
    record Solved(String words, boolean lasting, PowerFlow flow) {}

    /** All at their average. */
    Optional<Solved> average() {
        return solved("all at their average", true, LoadCase.AVERAGE);
    }

    /**
     * A case in which the loads ask for more than the supply can carry.
     *
     * @param words the case in words
     * @param collapse what gives way, and at what part of the loads
     */
    record Broken(String words, OperatingPoint.Collapse collapse) {}

    /** The average and the declared events in which the voltage collapses. */
    List<Broken> collapses() {
        List<Broken> all = new ArrayList<>();
        collapse("all at their average", LoadCase.AVERAGE).ifPresent(all::add);
        for (Event event : events) {
            collapse("during " + event.name(), LoadCase.AVERAGE.during(event)).ifPresent(all::add);
        }
        return all;
    }

    private Optional<Broken> collapse(String words, LoadCase of) {
        return at.operatingPoint(of.with(charge)) instanceof OperatingPoint.Collapse collapse
                ? Optional.of(new Broken(words, collapse))
                : Optional.empty();
    }

    /** Each declared event. */
    List<Solved> events() {
        List<Solved> all = new ArrayList<>();
        for (Event event : events) {
            boolean lasting = event.loads().stream()
                    .anyMatch(load -> load.seconds().known().filter(this::brief).isEmpty());
            solved("during " + event.name(), lasting, LoadCase.AVERAGE.during(event))
                    .ifPresent(all::add);
        }
        return all;
    }

    /**
     * The runs that are in trouble when their unit alone is at its peak. Many units at their peak together are never
     * better off than one of them: a group in which a unit stands it clears that unit, and only the others are looked at in
     * smaller groups.
     *
     * @param runs the runs asked about
     * @param trouble whether a run is in trouble in a case
     */
    Map<LoadRun, Solved> inTrouble(List<LoadRun> runs, BiPredicate<LoadRun, Solved> trouble) {
        Map<LoadRun, Solved> found = new LinkedHashMap<>();
        split(runs, trouble, found);
        return found;
    }

    /** Units whose peak alone the supply cannot carry, after {@link #inTrouble}. */
    List<Broken> brokenPeaks() {
        return brokenPeaks;
    }

    private void split(List<LoadRun> runs, BiPredicate<LoadRun, Solved> trouble, Map<LoadRun, Solved> found) {
        if (runs.isEmpty()) {
            return;
        }
        Set<String> units = new TreeSet<>();
        runs.forEach(run -> units.add(at.directory().name(run.load().unit())));
        Optional<Solved> together = solved(
                units.size() == 1 ? units.iterator().next() + " at its peak" : "several at their peak",
                true,
                LoadCase.AVERAGE.peaking(units));
        List<LoadRun> left = runs.stream()
                .filter(run -> together.isEmpty() || trouble.test(run, lasting(run, together.get())))
                .toList();
        if (units.size() == 1) {
            String unit = units.iterator().next();
            collapse(unit + " at its peak", LoadCase.AVERAGE.peaking(units)).ifPresent(brokenPeaks::add);
            together.ifPresent(one -> left.forEach(run -> found.put(run, lasting(run, one))));
            return;
        }
        Map<Boolean, List<LoadRun>> halves = halves(left);
        split(halves.getOrDefault(true, List.of()), trouble, found);
        split(halves.getOrDefault(false, List.of()), trouble, found);
    }

    /** The runs in two parts, those of one unit together. */
    private static Map<Boolean, List<LoadRun>> halves(List<LoadRun> runs) {
        List<Integer> units =
                runs.stream().map(run -> run.load().unit()).distinct().toList();
        Set<Integer> first = new HashSet<>(units.subList(0, (units.size() + 1) / 2));
        return runs.stream()
                .collect(Collectors.partitioningBy(
                        run -> first.contains(run.load().unit())));
    }

    private Solved lasting(LoadRun run, Solved solved) {
        boolean lasting = run.load().load().peakS().known().filter(this::brief).isEmpty();
        return new Solved(solved.words(), lasting, solved.flow());
    }

    /** Whether a peak of so many seconds is short enough for the limits of short peaks. */
    private boolean brief(double seconds) {
        return seconds <= at.limit(Thresholds.PEAK_BRIEF).value();
    }

    private Optional<Solved> solved(String words, boolean lasting, LoadCase of) {
        return at.operatingPoint(of.with(charge)) instanceof PowerFlow flow
                ? Optional.of(new Solved(words, lasting, flow))
                : Optional.empty();
    }
}
