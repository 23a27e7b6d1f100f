package ringout.solve.meter;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.model.State;
import ringout.model.shape.Shape;
import ringout.solve.MeterElement;

/** Asks what an ohmmeter shows between two points, and what every other reading would mean. */
public final class OhmsQuestion {
    /** Elements solved for all faults together; keeps the answer within a few seconds on the largest aircraft. */
    private static final long WORK = 1_000_000;

    private static final double NOTABLE_SHARE = 0.001;

    private OhmsQuestion() {}

    /** A state with more plugs pulled, each named UNIT-PLUG. */
    public static State pulled(State state, List<String> plugs) {
        List<String> all = new ArrayList<>(state.pulled());
        plugs.stream().filter(plug -> !all.contains(plug)).forEach(all::add);
        return Shape.of(State.class).with(state, "pulled", List.copyOf(all));
    }

    /**
     * The expected reading and what others would mean.
     *
     * @param circuit the circuit in the state asked for, with all plugs pulled that are pulled for the measurement
     * @param a vertex of the first point
     * @param b vertex of the second point
     * @param others the circuits of the other states with the same plugs pulled
     */
    public static OhmsAnswer ask(Circuit circuit, int a, int b, List<Circuit> others) {
        Probed probed = new Probed(circuit, a, b);
        Reading reading = probed.reading();
        List<Fault> faults = faults(probed);
        List<Telling.Effect> visible = new ArrayList<>();
        List<Fault> unseen = new ArrayList<>();
        long work = 0;
        int tried = 0;
        for (; tried < faults.size() && work < WORK; tried++) {
            Fault fault = faults.get(tried);
            Probed.Solved solved = probed.with(fault);
            work += solved.elements();
            Reading instead = solved.reading();
            if (!Telling.same(reading, instead)) {
                visible.add(new Telling.Effect(fault, visible.size(), instead));
            } else if (mattersUnseen(probed, fault)) {
                unseen.add(fault);
            }
        }
        Routes routes = new Routes(probed);
        return new OhmsAnswer(
                circuit.wiring().name(a),
                circuit.wiring().name(b),
                circuit.state().name(),
                circuit.state().pulled(),
                reading,
                spread(probed),
                routes.all(),
                routes.rest(),
                routes.restThrough(),
                Inside.between(probed),
                Telling.grouped(visible),
                BadContact.of(probed),
                unseen,
                faults.size() - tried,
                Gaps.of(probed),
                others.stream().map(other -> in(other, a, b, reading)).toList());
    }

    private static OhmsAnswer.StateReading in(Circuit other, int a, int b, Reading asked) {
        Reading reading = MeterNetwork.of(other).reading(a, b);
        return new OhmsAnswer.StateReading(other.state().name(), reading, Telling.same(asked, reading));
    }

    /** The likely ones first, opens with those that carry most of the current when there are many. */
    private static List<Fault> faults(Probed probed) {
        List<Fault> faults = new ArrayList<>(TerminatorFaults.of(probed));
        faults.addAll(inOrderOfLoad(probed, OpenFaults.of(probed)));
        faults.addAll(PlugFaults.of(probed));
        faults.addAll(LeadFaults.of(probed));
        return faults;
    }

    /** Rows in their own order as long as all can be tried. */
    private static List<Fault> inOrderOfLoad(Probed probed, List<Fault> open) {
        if (open.size() * (long) probed.island().members().size() < WORK) {
            return open;
        }
        List<Fault> byLoad = new ArrayList<>(open);
        byLoad.sort(Comparator.comparingDouble(fault -> -load(probed, fault)));
        return byLoad;
    }

    private static double load(Probed probed, Fault fault) {
        return fault.changes().stream()
                .map(OhmsQuestion::element)
                .flatMap(Optional::stream)
                .mapToDouble(probed::load)
                .max()
                .orElse(0);
    }

    private static Optional<Integer> element(Change change) {
        if (change instanceof Change.Opened opened) {
            return Optional.of(opened.element());
        }
        return change instanceof Change.Moved moved ? Optional.of(moved.element()) : Optional.empty();
    }

    /** Worth telling that it does not show: the meter's current passes what is at fault. */
    private static boolean mattersUnseen(Probed probed, Fault fault) {
        return switch (fault.kind()) {
            case TERMINATOR_MISSING, TERMINATOR_EXTRA, TERMINATOR_MOVED, TERMINATORS_ALL_MISSING -> true;
            case OPEN_CONDUCTOR, OPEN_CONTACT, OPEN_PAIR, UNSEATED, OPEN_PART, CROSSED ->
                load(probed, fault) > NOTABLE_SHARE;
            case CLOSED_SWITCH, STILL_MATED, SHORT, WRONG_SOCKET, SOURCE_OFF -> false;
        };
    }

    /** First order: an element moves the reading by the square of its part of the current times its own change. */
    private static double spread(Probed probed) {
        double squares = 0;
        if (probed.connected()) {
            for (Island.Member member : probed.island().members()) {
                MeterElement element = member.element();
                double share = probed.load(member.number());
                double moved =
                        share * share * element.ohm() * element.tolerance().half();
                squares += moved * moved;
            }
        }
        return Math.sqrt(squares);
    }
}
