package ringout.check.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import ringout.check.form.Situation;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.model.Event;
import ringout.model.EventLoad;
import ringout.solve.power.LoadCase;
import ringout.text.Ranges;

/**
 * A case of loads that peak together. Peaks that nobody declares are taken to come together; where events are declared,
 * they tell which do.
 *
 * @param loads what the loads draw
 * @param event the loads of the event by unit in lower case; empty without one
 * @param words what peaks: {@code all loads at their peak}
 */
record PeakCase(LoadCase loads, Map<String, EventLoad> event, String words) {
    private static final String ALL = "all loads at their peak";

    /**
     * Cases for what reacts at once, such as a regulator that limits its current: peaks of a moment count. Only a load that an
     * event puts at its peak follows the events; all others may peak at any time.
     */
    static List<PeakCase> sudden(Situation at) {
        return cases(at, PeakCase::peaks);
    }

    /** Cases for what takes seconds to react, such as a pack or a fuse: what an event names follows the events. */
    static List<PeakCase> lasting(Situation at) {
        return cases(at, (said, load) -> true);
    }

    private static List<PeakCase> cases(Situation at, BiPredicate<EventLoad, PlacedLoad> follows) {
        if (at.aircraft().events().isEmpty()) {
            return List.of(new PeakCase(LoadCase.PEAK, Map.of(), ALL));
        }
        List<Map<String, EventLoad>> events =
                at.aircraft().events().stream().map(PeakCase::named).toList();
        Set<String> free = new TreeSet<>();
        Set<String> bound = new TreeSet<>();
        Optional<PlacedLoad> largest = Optional.empty();
        for (PlacedLoad load : PowerGraph.of(at.circuit()).loads()) {
            boolean told = events.stream()
                    .anyMatch(event -> spoken(at, event, load)
                            .filter(said -> follows.test(said, load))
                            .isPresent());
            (told ? bound : free).add(at.directory().name(load.unit()));
            if (told && (largest.isEmpty() || rise(load) > rise(largest.get()))) {
                largest = Optional.of(load);
            }
        }
        if (largest.isEmpty()) {
            return List.of(new PeakCase(LoadCase.PEAK, Map.of(), ALL));
        }
        free.removeAll(bound);
        String most = at.directory().name(largest.get().unit());
        Set<String> alone = new TreeSet<>(free);
        alone.add(most);
        List<PeakCase> cases = new ArrayList<>();
        cases.add(new PeakCase(
                LoadCase.AVERAGE.peaking(alone), Map.of(), "all loads of no event at their peak, and " + most));
        for (int i = 0; i < events.size(); i++) {
            Event event = at.aircraft().events().get(i);
            cases.add(new PeakCase(
                    LoadCase.AVERAGE.peaking(free).during(event),
                    events.get(i),
                    "event " + event.name() + ", and all loads of no event at their peak"));
        }
        return cases;
    }

    private static boolean peaks(EventLoad said, PlacedLoad load) {
        return said.amps().isKnown()
                ? said.amps().or(0.0) >= load.load().peakA().or(Double.POSITIVE_INFINITY)
                : !said.watts().isKnown() && said.peak().or(true);
    }

    private static double rise(PlacedLoad load) {
        return load.load().peakA().or(0.0)
                - load.load().average(OptionalDouble.empty()).orElse(0);
    }

    /** What an event says of a load. */
    static Optional<EventLoad> spoken(Situation at, Map<String, EventLoad> event, PlacedLoad load) {
        EventLoad said = event.get(at.directory().name(load.unit()).toLowerCase(Locale.ROOT));
        return said != null && (!said.rail().isKnown() || said.rail().is(load.rail()))
                ? Optional.of(said)
                : Optional.empty();
    }

    /** The loads of an event by unit. */
    static Map<String, EventLoad> named(Event event) {
        Map<String, EventLoad> byUnit = new HashMap<>();
        for (EventLoad load : event.loads()) {
            Ranges.items(List.of(load.unit())).forEach(unit -> byUnit.putIfAbsent(unit.toLowerCase(Locale.ROOT), load));
        }
        return byUnit;
    }

    /** Whether a load draws more than its average in this case. */
    boolean raises(Situation at, PlacedLoad load) {
        return spoken(at, event, load).isPresent() || (peaking(at, load) && aboveAverage(load));
    }

    private boolean peaking(Situation at, PlacedLoad load) {
        return loads.level() == LoadCase.PEAK.level()
                || loads.peaking().contains(at.directory().name(load.unit()));
    }

    private static boolean aboveAverage(PlacedLoad load) {
        var average = load.load().averageA();
        return !average.isKnown() || load.load().peakA().or(0.0) > average.or(0.0);
    }

    /** How long a load that is raised stays so in s; empty when nobody tells. */
    OptionalDouble seconds(Situation at, PlacedLoad load) {
        Optional<EventLoad> said = spoken(at, event, load);
        if (said.isPresent() && said.get().seconds().isKnown()) {
            return OptionalDouble.of(said.get().seconds().or(0.0));
        }
        boolean own = said.isEmpty()
                || (!said.get().amps().isKnown() && !said.get().watts().isKnown());
        return own && load.load().peakS().isKnown()
                ? OptionalDouble.of(load.load().peakS().or(0.0))
                : OptionalDouble.empty();
    }
}
