package ringout.solve.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wire;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Event;
import ringout.model.Unit;
import ringout.model.shape.Shape;

/**
 * The two sample aircraft against figures worked out for them beforehand, apart from this program, in the notes that
 * come with the samples' raw tables: by hand for rails, drops and bench stages, and by an independent nodal solution for
 * the hover. Tolerance 1 %.
 */
class SampleFiguresTest {
    private static final double PART = 0.01;
    private static final List<String> SIX = motors("ESC", 6);

    private static List<String> motors(String prefix, int count) {
        return IntStream.rangeClosed(1, count).mapToObj(i -> prefix + i).toList();
    }

    private static void near(double expected, double actual) {
        assertEquals(expected, actual, PART * Math.abs(expected));
    }

    private static Event event(Circuit circuit, String name) {
        return circuit.wiring().aircraft().events().stream()
                .filter(event -> event.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void bothAreFullyDescribedAndBalanced() {
        for (String name : List.of("linewarden", "dewmaker", "starter")) {
            for (LoadLevel level : LoadLevel.values()) {
                PowerFlow flow = Flows.flow(Flows.sample(name), LoadCase.of(level));
                assertEquals(List.of(), flow.assumed(), name);
                assertEquals(0, flow.kirchhoffResidual(), 1e-12);
                assertEquals(0, flow.powerImbalance(), 1e-9);
                assertTrue(flow.loads().stream().allMatch(LoadFigure::fed), name);
            }
        }
    }

    @Test
    void linewardenHovers() {
        PowerFlow flow = Flows.flow(Flows.sample("linewarden"), LoadCase.AVERAGE);
        near(39.0, flow.packs().get(0).amps());
        near(39.0, flow.packs().get(1).amps());
        near(39.0, flow.amps(Flows.wire(flow, "W03")));
        near(39.0, flow.amps(Flows.wire(flow, "W01")));
        near(43.6, Flows.volts(flow, "PDB-BP", "PDB-BN"));
        near(1700, Endurance.of(flow, 0.8).orElseThrow().consumersW());
        near(781.4, Endurance.of(flow, 0.8).orElseThrow().usableWh());
        near(27.6, Endurance.of(flow, 0.8).orElseThrow().minutes());
    }

    @Test
    void linewardenRails() {
        Map<String, List<Double>> rails =
                Map.of("PMON", List.of(1.57, 3.37), "RG12", List.of(4.8, 9.0), "RG6", List.of(0.65, 4.45));
        Circuit circuit = Flows.sample("linewarden");
        rails.forEach((name, amps) -> {
            near(
                    amps.get(0),
                    Flows.regulator(Flows.flow(circuit, LoadCase.AVERAGE), name).outAmps());
            near(
                    amps.get(1),
                    Flows.regulator(Flows.flow(circuit, LoadCase.PEAK), name).outAmps());
        });
    }

    /** 3.8 V a cell and 170 A: 45.6 V to 42.1 V at the board, 0.47 V of it in the leads. */
    @Test
    void linewardenSagsAtFullThrottle() {
        LoadCase throttle = LoadCase.AVERAGE.peaking(SIX).with(PackCharge.cell(3.8));
        PowerFlow flow = Flows.flow(Flows.sample("linewarden"), throttle);
        near(170, flow.packs().get(0).amps());
        near(42.1, Flows.volts(flow, "PDB-BP", "PDB-BN"));
        double poles = Flows.volts(flow, "BAT2-POS", "BAT1-NEG");
        double leads = poles - Flows.volts(flow, "PDB-BP", "PDB-BN") + Flows.volts(flow, "BAT1-POS", "BAT2-NEG");
        assertEquals(0.47, leads, 0.02);
    }

    /** Bench supply of 48.0 V: 0.53 A, 0.625 A with the gear, 1.93 A with the payload; 0.18 A more while the gear moves. */
    @Test
    void linewardenOnTheBench() {
        Circuit all = Flows.sample("linewarden");
        LoadCase bench = LoadCase.IDLE.with(PackCharge.cell(4.0));
        Circuit avionics = Flows.without(all, "pulled", List.of("PDB-T3", "PDB-T4"));
        Circuit gear = Flows.without(all, "pulled", List.of("PDB-T3"));
        near(0.530, Flows.flow(avionics, bench).packs().get(0).amps());
        double atRest = Flows.flow(gear, bench).packs().get(0).amps();
        near(0.625, atRest);
        near(1.930, Flows.flow(all, bench).packs().get(0).amps());
        PowerFlow moving = Flows.flow(gear, bench.during(event(all, "gear moving")));
        assertEquals(0.18, moving.packs().get(0).amps() - atRest, 0.005);
    }

    @Test
    void dewmakerHoversFull() {
        PowerFlow flow = Flows.flow(Flows.sample("dewmaker"), LoadCase.AVERAGE);
        near(131, Flows.packAmps(flow));
        near(50.6, Flows.volts(flow, "PDB-BP1", "PDB-BN1"));
        near(0.52, flow.packs().get(0).amps() / Flows.packAmps(flow));
        near(0.48, flow.packs().get(1).amps() / Flows.packAmps(flow));
        Endurance endurance = Endurance.of(flow, 0.8).orElseThrow();
        near(6212 + 420, endurance.consumersW());
        near(16.5, endurance.minutes());
    }

    @Test
    void dewmakerRails() {
        Circuit circuit = Flows.sample("dewmaker");
        Map<String, List<Double>> rails = Map.of(
                "RG5A",
                List.of(0.9, 1.8),
                "RG5B",
                List.of(0.9, 1.8),
                "RGX",
                List.of(0.4, 1.2),
                "RG12",
                List.of(19.6, 34.2));
        rails.forEach((name, amps) -> {
            near(
                    amps.get(0),
                    Flows.regulator(Flows.flow(circuit, LoadCase.AVERAGE), name).outAmps());
            near(
                    amps.get(1),
                    Flows.regulator(Flows.flow(circuit, LoadCase.PEAK), name).outAmps());
        });
    }

    /** 14 AWG, 1.4 m, 12 A, four contacts of 3 milliohm: 0.42 V; less when the signal lead helps to carry it back. */
    @Test
    void dewmakerPumpFeeder() {
        LoadCase pump = LoadCase.AVERAGE.peaking(List.of("PMPL"));
        Circuit all = Flows.sample("dewmaker");
        PowerFlow alone = Flows.flow(Flows.without(all, "pulled", List.of("PMPL-S")), pump);
        near(0.42, feederDrop(alone));
        near(12, alone.amps(Flows.wire(alone, "W64")));
        assertTrue(feederDrop(Flows.flow(all, pump)) < feederDrop(alone));
    }

    private static double feederDrop(PowerFlow flow) {
        return Flows.volts(flow, "RG12-O1-1", "RG12-O1-2")
                - Flows.load(flow, "PMPL").volts();
    }

    @Test
    void dewmakerClimbs() {
        Circuit circuit = Flows.sample("dewmaker");
        PowerFlow flow = Flows.flow(circuit, LoadCase.AVERAGE.during(event(circuit, "climb")));
        for (String name : motors("ESC", 8)) {
            assertEquals(32, Flows.load(flow, name).amps(), 1e-9);
        }
    }

    /** Packs of 58.8 V and 57.4 V put in parallel, nothing else aboard: 1.4 V over 36.1 milliohm, 38.7 A. */
    @Test
    void dewmakerUnlikePacks() {
        Aircraft aircraft = SmallAircraft.sample("dewmaker");
        Shape<Unit> shape = Shape.of(Unit.class);
        List<Unit> units = aircraft.units().stream()
                .map(unit -> unit.ref().equals("PKA") ? shape.with(unit, "restV", Datum.of(58.8)) : unit)
                .map(unit -> unit.ref().equals("PKB") ? shape.with(unit, "restV", Datum.of(57.4)) : unit)
                .toList();
        Circuit circuit = Flows.circuit(Shape.of(Aircraft.class).with(aircraft, "units", units));
        List<String> others = units.stream()
                .map(Unit::ref)
                .filter(ref -> !List.of("PKA", "PKB", "PDB").contains(ref))
                .toList();
        PowerFlow flow = Flows.flow(Flows.without(circuit, "absent", others), LoadCase.IDLE.with(PackCharge.MEASURED));
        near(38.7, flow.packs().get(0).amps());
        assertEquals(-flow.packs().get(0).amps(), flow.packs().get(1).amps(), 1e-9);
    }

    /** 3.37 milliohm of black lead beside 120 milliohm of signal return: 2.7 %, 0.76 A of 28; 2.8 A with 10 more in it. */
    @Test
    void signalReturnTakesItsShare() {
        PowerFlow flow = Flows.flow(Flows.sample("linewarden"), LoadCase.AVERAGE.peaking(List.of("ESC1")));
        near(28, Flows.load(flow, "ESC1").amps());
        near(0.765, Math.abs(flow.amps(wire(flow, "W31", "ESC1-SIG-2"))));
        near(28 - 0.765, Math.abs(flow.amps(Flows.wire(flow, "W21"))));
    }

    private static Wire wire(PowerFlow flow, String lead, String pin) {
        int at = Flows.at(flow, pin);
        return flow.circuit().wiring().wires().stream()
                .filter(wire -> wire.lead().id().equals(lead) && (wire.fromPin() == at || wire.toPin() == at))
                .findFirst()
                .orElseThrow();
    }

    /** With a black lead left off, all of the controller's current comes back through its signal lead. */
    @Test
    void withoutItsBlackLeadAControllerReturnsThroughItsSignalLead() {
        Aircraft aircraft = SmallAircraft.sample("linewarden");
        var leads = aircraft.leads().stream()
                .filter(lead -> !lead.id().equals("W23"))
                .toList();
        PowerFlow flow =
                Flows.flow(Flows.circuit(Shape.of(Aircraft.class).with(aircraft, "leads", leads)), LoadCase.AVERAGE);
        double through = Math.abs(flow.amps(wire(flow, "W33", "ESC3-SIG-2")));
        assertEquals(Flows.load(flow, "ESC3").amps(), through, 1e-9);
        assertTrue(through > 2.2, "more than its 26 AWG carries");
    }
}
