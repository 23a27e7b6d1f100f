package ringout.solve.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.edit.Edits;
import ringout.read.edit.EditReader;
import ringout.solve.Ohmmeter;
import ringout.solve.network.Resistance;

/**
 * A fault simulated as a change of the network reads as the aircraft with the fault written into its list, which the plain
 * ohmmeter reads on a graph built anew: two ways that share only the values of the resistances.
 */
class OhmsFaultsTest {
    private static final String BUS = "FC-C2-H FC-C2-L";
    private static final String BOTH_OFF =
            "set units[FC].ports[CAN2].terminator none\nset units[GMC].ports[CAN2].terminator off";
    private static final String EXCHANGED = "set leads[W68].from LOG-AUX\nset leads[W90].from LOG-C2";

    /** Points of the meter; kind, object and first details of the fault; the same written into the list. */
    static Stream<Arguments> faultsAndEdits() {
        return Stream.of(
                Arguments.of(
                        BUS, Fault.Kind.TERMINATOR_MISSING, "GMC", "", "set units[GMC].ports[CAN2].terminator off"),
                Arguments.of(BUS, Fault.Kind.TERMINATOR_MISSING, "FC", "", "set units[FC].ports[CAN2].terminator none"),
                Arguments.of(BUS, Fault.Kind.TERMINATOR_EXTRA, "LOG", "", "set units[LOG].ports[CAN2].terminator on"),
                Arguments.of(BUS, Fault.Kind.TERMINATORS_ALL_MISSING, "FC", "FC", BOTH_OFF),
                Arguments.of(BUS, Fault.Kind.OPEN_CONDUCTOR, "W66", "", "set leads[W66].pins 1>1 3>3 4>4"),
                Arguments.of(BUS, Fault.Kind.UNSEATED, "GN1-C2", "", "remove leads[W66]"),
                Arguments.of(BUS, Fault.Kind.CROSSED, "W65", "FC-C2-1", "set leads[W65].pins 1>2 2>1 3>3 4>4"),
                Arguments.of(
                        "FC-C2-H GN1-C1-L",
                        Fault.Kind.CROSSED,
                        "W65",
                        "FC-C2-2",
                        "set leads[W65].pins 1>1 2>3 3>2 4>4"),
                Arguments.of(
                        "FC-C2-L GN1-C1-H",
                        Fault.Kind.CROSSED,
                        "W65",
                        "FC-C2-2",
                        "set leads[W65].pins 1>1 2>3 3>2 4>4"),
                Arguments.of(BUS, Fault.Kind.WRONG_SOCKET, "W68", "LOG-C2 LOG-AUX", EXCHANGED),
                Arguments.of("COR-D-3 COR-D-2", Fault.Kind.WRONG_SOCKET, "W90", "LOG-AUX LOG-C2", EXCHANGED));
    }

    @ParameterizedTest(name = "{0} {1} {2} {3}")
    @MethodSource("faultsAndEdits")
    void readsAsTheListWithTheFaultWrittenIn(
            String points, Fault.Kind kind, String object, String detail, String edits) {
        Circuit circuit = MeterTests.linewarden();
        String[] at = points.split(" ");
        OhmsAnswer answer = MeterTests.ohms(circuit, at[0], at[1]);
        Fault fault = all(answer).stream()
                .filter(f -> f.kind() == kind && f.object().equals(object))
                .filter(f -> String.join(" ", f.details()).startsWith(detail))
                .findFirst()
                .orElseThrow();
        Reading simulated = MeterNetwork.of(circuit)
                .reading(MeterTests.at(circuit, at[0]), MeterTests.at(circuit, at[1]), fault.changes());
        assertEquals(plain(edited(edits), at[0], at[1]), ohm(simulated), 1e-9);
    }

    private static List<Fault> all(OhmsAnswer answer) {
        List<Fault> all = new ArrayList<>(answer.unseen());
        answer.meanings().forEach(meaning -> all.addAll(meaning.faults()));
        return all;
    }

    private static double ohm(Reading reading) {
        return reading instanceof Reading.Ohms ohms ? ohms.ohm() : Double.POSITIVE_INFINITY;
    }

    private static double plain(Aircraft aircraft, String from, String to) {
        Circuit circuit = Circuit.all(Wiring.of(aircraft)).get(0);
        Resistance reading = Ohmmeter.of(circuit).between(MeterTests.at(circuit, from), MeterTests.at(circuit, to));
        return reading instanceof Resistance.Ohms ohms ? ohms.value() : Double.POSITIVE_INFINITY;
    }

    private static Aircraft edited(String edits) {
        EditReader.Result read = EditReader.read("edit", edits);
        assertTrue(read.problems().isEmpty(), read.problems().toString());
        var edited = Edits.apply(SmallAircraft.sample("linewarden"), read.edits());
        assertTrue(edited.problems().isEmpty(), edited.problems().toString());
        return edited.aircraft();
    }

    /** Lesson of the trade: one leg open reads as both legs open. */
    @Test
    void oneLegOpenReadsAsBoth() {
        Circuit circuit = MeterTests.linewarden();
        int h = MeterTests.at(circuit, "FC-C2-H");
        int l = MeterTests.at(circuit, "FC-C2-L");
        List<Change> legs = circuit.wiring().wires().stream()
                .filter(wire -> wire.lead().id().equals("W67"))
                .filter(wire -> List.of("2", "3")
                        .contains(circuit.wiring().pin(wire.fromPin()).number()))
                .<Change>map(wire -> new Change.Opened(circuit.wiring().conductorEdge(wire)))
                .toList();
        assertEquals(2, legs.size());
        MeterNetwork network = MeterNetwork.of(circuit);
        assertEquals(ohm(network.reading(h, l, legs)), ohm(network.reading(h, l, legs.subList(0, 1))), 1e-9);
    }

    /** Current is conserved: the ways told and the rest are the whole of it. */
    @Test
    void theWaysCarryAllOfTheCurrent() {
        OhmsAnswer answer = MeterTests.ohms(MeterTests.linewarden(), "FC-C2-H", "GMC-C1-L");
        double told = answer.routes().stream().mapToDouble(Route::share).sum();
        assertEquals(1, told + answer.rest(), 1e-9);
        assertTrue(told > 0.9, "" + told);
        assertTrue(answer.rest() >= 0);
        assertEquals("FC-C2-2", answer.routes().get(0).trail().names().get(0));
    }

    @Test
    void readingsAreSortedAndNoFaultIsToldTwice() {
        OhmsAnswer answer = MeterTests.ohms(MeterTests.linewarden("GMC-C1"), "W68@GMC-C1-H", "W68@GMC-C1-L");
        List<Fault> told = all(answer);
        assertEquals(told.stream().distinct().count(), told.size());
        double before = -1;
        for (Meaning meaning : answer.meanings()) {
            assertTrue(ohm(meaning.first()) > before, meaning.toString());
            before = ohm(meaning.last());
        }
        assertTrue(told.stream()
                .anyMatch(f -> f.kind() == Fault.Kind.STILL_MATED && f.object().equals("GMC-C1")));
    }

    @Test
    void aShortJoinsWhatNothingElseJoins() {
        Circuit circuit = MeterTests.linewarden();
        OhmsAnswer answer = MeterTests.ohms(circuit, "FC-C2-1", "FC-C2-H");
        assertEquals(new Reading.NoConnection(), answer.reading());
        assertEquals(List.of("FC"), answer.inside());
        List<String> shorted = answer.meanings().get(0).faults().stream()
                .filter(fault -> fault.kind() == Fault.Kind.SHORT)
                .map(Fault::object)
                .toList();
        assertTrue(shorted.contains("W65"), shorted.toString());
    }
}
