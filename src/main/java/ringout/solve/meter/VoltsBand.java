package ringout.solve.meter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Event;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;

/**
 * Between what a voltage may be when all is well: full and empty packs, loads at rest, at average and in every event,
 * regulators nominal and at both ends of their tolerance.
 *
 * @param least the case of the smallest voltage
 * @param most the case of the largest voltage
 * @param withoutFigure cases in which no voltage can be told, because it collapses
 */
record VoltsBand(Optional<VoltsAnswer.Extreme> least, Optional<VoltsAnswer.Extreme> most, List<String> withoutFigure) {
    static final VoltsBand NONE = new VoltsBand(Optional.empty(), Optional.empty(), List.of());

    private static final double SAME_V = 0.001;

    private record Loads(String words, LoadCase of) {}

    /**
     * The band in a circuit.
     *
     * @param event the event asked for, else every declared one
     * @param reading reads the voltage off an operating point
     */
    static VoltsBand of(Circuit circuit, Optional<Event> event, Function<OperatingPoint, Reading> reading) {
        List<VoltsAnswer.Extreme> all = new ArrayList<>();
        List<String> without = new ArrayList<>();
        Wiring wiring = circuit.wiring();
        List<Loads> loads = loads(wiring, event);
        cases(circuit, "at their nominal voltage", loads, reading, all, without);
        if (RegulatorSpread.matters(wiring.aircraft())) {
            cases(moved(circuit, 1), "at the upper end of their tolerance", loads, reading, all, without);
            cases(moved(circuit, -1), "at the lower end of their tolerance", loads, reading, all, without);
        }
        Comparator<VoltsAnswer.Extreme> byVolts = Comparator.comparingDouble(VoltsAnswer.Extreme::volts);
        return new VoltsBand(
                all.stream().min(byVolts).map(end -> whatMatters(end, all)),
                all.stream().max(byVolts).map(end -> whatMatters(end, all)),
                without.stream().distinct().toList());
    }

    private static Circuit moved(Circuit circuit, int sign) {
        Wiring wiring = circuit.wiring();
        return Circuit.of(Wiring.of(RegulatorSpread.of(wiring.aircraft(), sign)), circuit.state());
    }

    private static void cases(
            Circuit circuit,
            String tolerance,
            List<Loads> loads,
            Function<OperatingPoint, Reading> reading,
            List<VoltsAnswer.Extreme> all,
            List<String> without) {
        for (Loads drawn : loads) {
            for (PackCharge charge : List.of(PackCharge.FULL, PackCharge.EMPTY)) {
                String packs = charge.kind() == PackCharge.Kind.FULL ? "full" : "empty";
                Reading at = reading.apply(OperatingPoint.of(circuit, drawn.of().with(charge)));
                if (at instanceof Reading.Volts volts) {
                    all.add(new VoltsAnswer.Extreme(volts.volts(), packs, drawn.words(), tolerance));
                } else {
                    without.add("packs " + packs + ", loads " + drawn.words());
                }
            }
        }
    }

    /** Names only what makes a difference: a case that gives the same with other packs does so at any charge. */
    private static VoltsAnswer.Extreme whatMatters(VoltsAnswer.Extreme end, List<VoltsAnswer.Extreme> all) {
        List<VoltsAnswer.Extreme> same = all.stream()
                .filter(other -> Math.abs(other.volts() - end.volts()) <= SAME_V)
                .toList();
        return new VoltsAnswer.Extreme(
                end.volts(),
                any(VoltsAnswer.Extreme::packs, same, all) ? "at any charge" : end.packs(),
                any(VoltsAnswer.Extreme::loads, same, all) ? "of any kind" : end.loads(),
                any(VoltsAnswer.Extreme::tolerance, same, all) ? "anywhere in their tolerance" : end.tolerance());
    }

    private static boolean any(
            Function<VoltsAnswer.Extreme, String> of, List<VoltsAnswer.Extreme> same, List<VoltsAnswer.Extreme> all) {
        long among = same.stream().map(of).distinct().count();
        return among > 1 && among == all.stream().map(of).distinct().count();
    }

    private static List<Loads> loads(Wiring wiring, Optional<Event> event) {
        List<Loads> loads = new ArrayList<>();
        if (event.isPresent()) {
            Event happening = event.get();
            loads.add(new Loads(happening.name() + ", else at rest", LoadCase.IDLE.during(happening)));
            loads.add(new Loads(happening.name() + ", else average", LoadCase.AVERAGE.during(happening)));
            return loads;
        }
        loads.add(new Loads("at rest", LoadCase.IDLE));
        loads.add(new Loads("average", LoadCase.AVERAGE));
        for (Event happening : wiring.aircraft().events()) {
            loads.add(new Loads(happening.name() + ", else average", LoadCase.AVERAGE.during(happening)));
        }
        return loads;
    }
}
