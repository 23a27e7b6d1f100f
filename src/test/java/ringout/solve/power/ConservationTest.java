package ringout.solve.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.ByteArrayOutputStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;
import ringout.synthetic.SyntheticAircraft;

/**
 * Conservation of charge and energy, which hold whatever the aircraft: what enters a unit by its pins leaves it by others,
 * and what the units take and the conductors heat is what the packs give. Read from pins and conductors alone, not from
 * the solver's own residuals.
 */
class ConservationTest {
    private static final double CHARGE = 1e-9;
    private static final double ENERGY = 1e-9;

    @Property(tries = 12)
    void madeUpAircraft(@ForAll @LongRange(min = 0, max = 100_000) long seed) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SyntheticAircraft.write(seed, 400, out);
        MemoryFolder folder = MemoryFolder.named("made").with("aircraft.json", out.toByteArray());
        Wiring wiring = Wiring.of(AircraftReader.read(folder, "aircraft.json").aircraft());
        Circuit.all(wiring).forEach(circuit -> {
            assertConserved(circuit, LoadCase.AVERAGE);
            assertConserved(circuit, LoadCase.PEAK.with(PackCharge.EMPTY).with(WireTemperature.AMBIENT));
        });
    }

    @Test
    void samples() {
        for (String name : new String[] {"linewarden", "dewmaker", "starter", "linewarden-review"}) {
            assertConserved(Flows.sample(name), LoadCase.AVERAGE);
            assertConserved(Flows.sample(name), LoadCase.PEAK);
        }
    }

    private static void assertConserved(Circuit circuit, LoadCase of) {
        PowerFlow flow = assertInstanceOf(PowerFlow.class, OperatingPoint.of(circuit, of));
        Wiring wiring = circuit.wiring();
        double scale =
                1 + flow.packs().stream().mapToDouble(p -> Math.abs(p.amps())).sum();
        double taken = 0;
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            double into = 0;
            for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
                into += flow.intoPin(pin);
                taken += flow.floats(pin) ? 0 : flow.intoPin(pin) * volts(flow, pin);
            }
            assertEquals(0, into, CHARGE * scale, wiring.directory().name(unit));
        }
        double heat = heat(flow);
        assertEquals(0, taken + heat, ENERGY * flow.sourceWatts());
        double used = flow.loads().stream().mapToDouble(LoadFigure::watts).sum()
                + flow.regulators().stream().mapToDouble(RegulatorFigure::heat).sum()
                + flow.packs().stream().mapToDouble(PackFigure::heat).sum()
                + heat
                + innerHeat(flow);
        assertEquals(flow.sourceWatts(), used, ENERGY * flow.sourceWatts());
    }

    private static double volts(PowerFlow flow, int pin) {
        return ((ringout.solve.network.NodeVoltage.Volts) flow.voltage(pin)).value();
    }

    private static double heat(PowerFlow flow) {
        Wiring wiring = flow.circuit().wiring();
        double heat = 0;
        for (Wire wire : wiring.wires()) {
            heat += flow.heat(wire) + flow.heat(wiring.fromContactEdge(wire)) + flow.heat(wiring.toContactEdge(wire));
        }
        for (Part part : wiring.parts()) {
            heat += part.origin() instanceof Part.LeadFuse ? flow.heat(part) : 0;
        }
        return heat;
    }

    /** Links, diodes, sense resistors and the like inside units. */
    private static double innerHeat(PowerFlow flow) {
        double heat = 0;
        for (Part part : flow.circuit().wiring().parts()) {
            boolean device = flow.packs().stream().anyMatch(p -> p.source().part() == part.index())
                    || flow.regulators().stream().anyMatch(r -> r.source().part() == part.index());
            heat += device || !(part.origin() instanceof Part.Inner) ? 0 : flow.heat(part);
        }
        return heat;
    }
}
