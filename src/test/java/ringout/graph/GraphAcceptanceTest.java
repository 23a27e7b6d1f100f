package ringout.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ringout.graph.SmallAircraft.circuit;
import static ringout.graph.SmallAircraft.pin;
import static ringout.graph.SmallAircraft.point;
import static ringout.graph.SmallAircraft.read;
import static ringout.graph.SmallAircraft.sample;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.Trunk;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.graph.returns.ReturnGraph;
import ringout.graph.returns.ReturnWay;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.graph.wire.Ampacity;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.edit.Edits;
import ringout.model.shape.Shape;
import ringout.read.edit.EditReader;

/**
 * What the graph must know before any check runs: the traps of the trade handbook's chapter for the developer, one test each.
 * The figures of the two aircraft are those of the handbook, worked out there.
 */
class GraphAcceptanceTest {
    private static final Aircraft LW = sample("linewarden");
    private static final Aircraft DM = sample("dewmaker");

    private static Aircraft edited(Aircraft aircraft, String... lines) {
        String text = String.join("\n", lines) + "\n";
        var edits = EditReader.read("test", text);
        assertEquals(List.of(), edits.problems());
        return Edits.apply(aircraft, edits.edits()).aircraft();
    }

    private static Volts volts(Circuit circuit, String plus, String minus) {
        return PowerGraph.of(circuit)
                .between(pin(circuit, plus), pin(circuit, minus))
                .orElseThrow();
    }

    @Test
    void aSeriesLinkJoinsPlusToMinusAndIsNoShort() {
        Circuit circuit = circuit(LW);
        assertTrue(circuit.nets().same(pin(circuit, "BAT1-POS"), pin(circuit, "BAT2-NEG")));
        assertEquals("39.6 44.4 50.4", words(volts(circuit, "ESC3-P", "ESC3-N")));
        assertFalse(PowerGraph.of(circuit).ties().same(pin(circuit, "ESC3-P"), pin(circuit, "ESC3-N")));
    }

    private static String words(Volts volts) {
        return Stream.of(volts.low(), volts.nominal().orElse(Double.NaN), volts.high())
                .map(v -> Math.round(v * 1000) / 1000.0)
                .map(String::valueOf)
                .reduce((a, b) -> a + " " + b)
                .orElseThrow();
    }

    @Test
    void equalPacksInParallelAreOneRail() {
        Circuit circuit = circuit(DM);
        assertEquals("46.2 51.8 58.8", words(volts(circuit, "ESC8-P", "ESC8-N")));
        assertEquals(List.of("PKA", "PKB"), feeding(circuit, pin(circuit, "ESC8-P")));
    }

    private static List<String> feeding(Circuit circuit, int vertex) {
        return PowerGraph.of(circuit).feeding(vertex).stream()
                .map(PowerSource::name)
                .toList();
    }

    @Test
    void aBoardPassesARailAndIsNoSource() {
        Circuit circuit = circuit(LW);
        int board = circuit.wiring().directory().find("PDB").orElseThrow();
        assertTrue(PowerGraph.of(circuit).sources().stream().noneMatch(source -> source.unit() == board));
        assertEquals(List.of("BAT2"), feeding(circuit, pin(circuit, "PDB-T2-1")));
    }

    @Test
    void aSignalBoardPassesSignals() {
        Circuit circuit = circuit(LW);
        assertTrue(circuit.nets().same(pin(circuit, "FC-MA-2"), pin(circuit, "ESC2-SIG-1")));
        assertFalse(circuit.nets().same(pin(circuit, "FC-MA-2"), pin(circuit, "ESC3-SIG-1")));
    }

    @Test
    void aSpliceIsNoUnitOfItsOwn() {
        Circuit circuit = circuit(LW);
        assertTrue(circuit.nets().same(pin(circuit, "LIDF-I-2"), pin(circuit, "LIDD-I-2")));
        assertEquals(List.of("PMON 5.3"), feeding(circuit, pin(circuit, "LIDF-I-1")));
    }

    @Test
    void aCombinerOfDiodesIsNoParallelConnection() {
        Circuit circuit = circuit(DM);
        assertEquals(List.of("RG5A 5.2"), feeding(circuit, pin(circuit, "FC-PA-1")));
        assertEquals(List.of("RG5B 5.2"), feeding(circuit, pin(circuit, "FC-PB-1")));
        assertEquals(List.of("RG5A 5.2", "RG5B 5.2"), feeding(circuit, point(circuit, "FC", "5")));
        assertEquals("5.14 5.2 5.26", words(volts(circuit, "GNA-C1-1", "GNA-C1-4")));
    }

    @Test
    void insideAUnitTheRailIsOnePointButNotAcrossItsRegulator() {
        Circuit circuit = circuit(LW);
        Nets nets = circuit.nets();
        assertTrue(nets.same(pin(circuit, "LGC-PWR-1"), pin(circuit, "LGC-LH-2")), "rail");
        assertTrue(nets.same(pin(circuit, "FC-C2-4"), pin(circuit, "FC-RC-3")), "0V");
        assertTrue(nets.same(pin(circuit, "IMU-C1-2"), pin(circuit, "IMU-C2-2")), "second socket of a bus unit");
        assertFalse(nets.same(pin(circuit, "PMON-IN-1"), pin(circuit, "PMON-OUT-1")), "in and out of a regulator");
        assertTrue(nets.same(pin(circuit, "PMON-IN-2"), pin(circuit, "PMON-OUT-5")), "0V of a regulator");
    }

    @Test
    void hasGroundIsNotHasEnoughGround() {
        Circuit healthy = circuit(LW);
        assertEquals(new Ampacity(41 * 1.4, 41 * 1.4), width(healthy), "12 AWG silicone in moving air");
        Circuit bare = circuit(edited(LW, "remove leads[W23]"));
        assertTrue(ReturnGraph.of(bare).reaches(pin(bare, "ESC3-N"), pin(bare, "BAT1-NEG")));
        assertEquals(new Ampacity(2.2, 2.2), width(bare));
        ReturnWay way = ReturnGraph.of(bare)
                .way(pin(bare, "ESC3-N"), pin(bare, "BAT1-NEG"))
                .orElseThrow();
        assertEquals("W33", way.bottleneck().orElseThrow().lead().id());
        assertEquals(6.1, PowerGraph.of(bare).demand().averageA(pin(bare, "ESC3-P")), 0.05);
    }

    private static Ampacity width(Circuit circuit) {
        return ReturnGraph.of(circuit).width(pin(circuit, "ESC3-N"), pin(circuit, "BAT1-NEG"));
    }

    @Test
    void aPairIsWholeOnlyWithBothConductors() {
        Circuit circuit = circuit(edited(LW, "set leads[W66].pins 2>2 4>4"));
        Buses buses = Buses.of(circuit);
        BusLink half = buses.links().stream()
                .filter(link -> link.lead().id().equals("W66"))
                .findFirst()
                .orElseThrow();
        assertEquals(BusLink.Legs.HIGH_ONLY, half.legs());
        assertFalse(half.pair());
        assertEquals(
                2,
                buses.segments().stream()
                        .filter(segment -> !segment.links().isEmpty())
                        .filter(segment -> segment.name().equals("CAN2"))
                        .count());
    }

    @Test
    void stubsAreMeasuredFromTheTerminatedTrunkElseFromTheLongestPath() {
        Circuit clean = circuit(LW);
        assertEquals(1800, trunk(clean).lengthMm(), 1e-9, "FC to GMC");
        Circuit moved = circuit(
                edited(LW, "set units[LOG].ports[CAN2].terminator on", "set units[GMC].ports[CAN2].terminator off"));
        assertEquals(1350, trunk(moved).lengthMm(), 1e-9, "FC to LOG");
        Circuit single = circuit(edited(LW, "set units[GMC].ports[CAN2].terminator off"));
        assertEquals(1800, trunk(single).lengthMm(), 1e-9, "longest path again");
    }

    private static Trunk trunk(Circuit circuit) {
        Buses buses = Buses.of(circuit);
        BusSegment segment = buses.segments().stream()
                .filter(s -> s.name().equals("CAN2") && !s.links().isEmpty())
                .findFirst()
                .orElseThrow();
        return buses.trunk(segment);
    }

    @Test
    void equalUnitsAreToldApartByWhatTheyDrive() {
        assertEquals("M2 by FC-MA-2, M3 by FC-MA-3", drivenBy(circuit(LW)));
        assertEquals(
                "M2 by FC-MA-3, M3 by FC-MA-2", drivenBy(circuit(edited(LW, "set leads[W41].pins 1>1 2>3 3>2 4>4"))));
    }

    private static String drivenBy(Circuit circuit) {
        Map<Integer, String> byNumber = new TreeMap<>();
        for (MotorDrive drive : MotorDrives.of(circuit)) {
            byNumber.put(
                    drive.number().orElseThrow(),
                    circuit.wiring().name(drive.drivers().get(0)));
        }
        return "M2 by " + byNumber.get(2) + ", M3 by " + byNumber.get(3);
    }

    @Test
    void phasesKeepTheirOrderAndCountTheirInversions() {
        List<MotorDrive> drives = MotorDrives.of(circuit(LW));
        assertEquals("A-U, B-V, C-W", drives.get(0).phases().words());
        assertEquals(Optional.of(0), drives.get(0).phases().inversions());
        assertEquals("A-V, B-U, C-W", drives.get(1).phases().words());
        assertEquals(Optional.of(1), drives.get(1).phases().inversions());
    }

    @Test
    void numbersKeepUnitAndOriginAndANominalIsNoLimit() {
        Circuit circuit = circuit(edited(LW, "set leads[W33].awg 24 (measured)"));
        Wire wire = circuit.wiring().wires().stream()
                .filter(w -> w.lead().id().equals("W33"))
                .findFirst()
                .orElseThrow();
        assertEquals(Origin.MEASURED, wire.areaMm2().source());
        assertEquals(0.2047, ((Datum.Known<Double>) wire.areaMm2()).value(), 5e-5, "ASTM B258");
        Volts twelve = volts(circuit, "ESC1-P", "ESC1-N");
        assertTrue(twelve.low() < twelve.nominal().orElseThrow()
                && twelve.nominal().orElseThrow() < twelve.high());
    }

    @Test
    void theOrderOfRowsChangesNothing() {
        Circuit circuit = circuit(DM);
        Circuit turned = circuit(turned(DM));
        for (String pin : List.of("ESC5-P-1", "GNA-C1-1", "NOZ3-S-2", "LGT2-PWR-1")) {
            String zero = pin.startsWith("ESC") ? "ESC5-N-1" : pin.replaceFirst("-\\d$", "-" + zeroPin(circuit, pin));
            assertEquals(volts(circuit, pin, zero), volts(turned, pin, zero), pin);
            assertEquals(
                    feeding(circuit, pin(circuit, pin)).stream().sorted().toList(),
                    feeding(turned, pin(turned, pin)).stream().sorted().toList());
        }
    }

    private static String zeroPin(Circuit circuit, String pin) {
        int at = pin(circuit, pin);
        return String.valueOf(circuit.wiring().plug(at).pins().size());
    }

    private static Aircraft turned(Aircraft aircraft) {
        Shape<Aircraft> shape = Shape.of(Aircraft.class);
        List<Object> units = new ArrayList<>(aircraft.units());
        List<Object> leads = new ArrayList<>(aircraft.leads());
        Collections.reverse(units);
        Collections.reverse(leads);
        return shape.with(shape.with(aircraft, "units", units), "leads", leads);
    }

    @Test
    void aUnitOffInAStateIsOutOfIt() {
        List<Circuit> states = Circuit.all(Wiring.of(LW));
        assertEquals(
                List.of("as flown", "payload off"),
                states.stream().map(c -> c.state().name()).toList());
        assertTrue(PowerGraph.of(states.get(0)).tree().reaches(pin(states.get(0), "GMC-PWR-1")));
        assertFalse(PowerGraph.of(states.get(1)).tree().reaches(pin(states.get(1), "GMC-PWR-1")));
    }

    @Test
    void aListWithoutTypesStillHasAShape() {
        Circuit circuit = circuit(read("""
                {"units": [{"ref": "A", "type": "MYSTERY"}, {"ref": "B", "type": "MYSTERY"}],
                 "leads": [{"id": "W1", "from": "A-J1", "to": "B-J2", "pins": "1>1 2>2"}]}
                """));
        assertEquals(2, circuit.wiring().wires().size());
        assertEquals(List.of(), PowerGraph.of(circuit).sources());
        assertEquals(List.of(), PowerGraph.of(circuit).consumers());
    }
}
