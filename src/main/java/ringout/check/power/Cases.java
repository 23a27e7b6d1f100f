package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.Situation;
import ringout.graph.power.PlacedLoad;
import ringout.model.Event;
import ringout.solve.power.LoadCase;
import ringout.solve.power.LoadLevel;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;
import ringout.solve.power.PowerFlow;

/**
 * The cases of loads a unit is judged in: all at their average, each declared event, and the unit alone at its peak. All at
 * their peak together, which nothing asks for, serves only to see quickly which units cannot be in trouble.
 */
final class Cases {
    private final Situation at;
    private final PackCharge charge;
    private final List<Event> events;

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
                    .anyMatch(load ->
                            load.seconds().known().filter(s -> s <= SECONDS).isEmpty());
            solved("during " + event.name(), lasting, LoadCase.AVERAGE.during(event))
                    .ifPresent(all::add);
        }
        return all;
    }

    /** All at their peak together. */
    Optional<Solved> screen() {
        return solved("all at their peak", true, LoadCase.of(LoadLevel.PEAK));
    }

    /** The unit of a load alone at its peak. */
    Optional<Solved> peak(PlacedLoad load) {
        String unit = at.directory().name(load.unit());
        boolean lasting = load.load().peakS().known().filter(s -> s <= SECONDS).isEmpty();
        return solved(unit + " at its peak", lasting, LoadCase.AVERAGE.peaking(Set.of(unit)));
    }

    /** Up to here a peak is a matter of seconds. */
    private static final double SECONDS = 10;

    private Optional<Solved> solved(String words, boolean lasting, LoadCase of) {
        return at.operatingPoint(of.with(charge)) instanceof PowerFlow flow
                ? Optional.of(new Solved(words, lasting, flow))
                : Optional.empty();
    }
}
