package ringout.solve.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.solve.dc.ElementState;
import ringout.solve.network.NodeVoltage;

/** Small supplies against arithmetic done by hand: Ohm's and Kirchhoff's laws, and the quadratic of a constant power. */
class OperatingPointTest {
    private static final double EXACT = 1e-9;

    private static PowerFlow flow(Circuit circuit) {
        return Flows.flow(circuit, LoadCase.AVERAGE);
    }

    /** 4 A through 50 milliohm. */
    @Test
    void constantCurrent() {
        PowerFlow flow = flow(Bench.loop(Bench.amps(4), ""));
        assertEquals(11.8, Flows.load(flow, "L").volts(), EXACT);
        assertEquals(47.2, Flows.load(flow, "L").watts(), EXACT);
        assertEquals(4, flow.amps(Flows.wire(flow, "W1")), EXACT);
        assertEquals(4, flow.amps(Flows.wire(flow, "W2")), EXACT);
        assertEquals(0.16, flow.heat(Flows.wire(flow, "W1")), EXACT);
        assertEquals(4, flow.intoPin(Flows.at(flow, "L-S-1")), EXACT);
        assertEquals(-4, flow.intoPin(Flows.at(flow, "L-S-2")), EXACT);
        assertEquals(-4, flow.intoPin(Flows.at(flow, "A-P")), EXACT);
        assertEquals(0.08, flow.heat(flow.circuit().wiring().toContactEdge(Flows.wire(flow, "W1"))), EXACT);
        assertEquals(0.04, Flows.volts(flow, "W1@A-P", "W1@L-S-1"), EXACT);
        PackFigure pack = flow.packs().get(0);
        assertEquals(12, pack.openVolts());
        assertEquals(11.92, pack.volts(), EXACT);
        assertEquals(0.08, pack.sag(), EXACT);
        assertEquals(0.32, pack.heat(), EXACT);
        assertEquals(48, flow.sourceWatts(), EXACT);
    }

    /** I = (E - sqrt(E^2 - 4 R P)) / 2R with E = 12 V, R = 50 milliohm, P = 40 W. */
    @Test
    void constantPower() {
        PowerFlow flow = flow(Bench.loop("{\"rail\": \"r\", \"averageW\": 40}", ""));
        assertEquals((12 - Math.sqrt(144 - 8)) / 0.1, Flows.load(flow, "L").amps(), EXACT);
        assertEquals(40, Flows.load(flow, "L").watts(), EXACT);
    }

    /** 4 A at 12 V are 3 ohm. */
    @Test
    void resistance() {
        PowerFlow flow = flow(Bench.loop("{\"rail\": \"r\", \"averageA\": 4, \"law\": \"resistance\"}", ""));
        assertEquals(12 / 3.05, Flows.load(flow, "L").amps(), EXACT);
    }

    /** E^2 / 4R = 720 W is the most there is: 800 W collapse, with 0.9 of them the last that is carried. */
    @Test
    void collapseIsReportedAndNoVoltage() {
        Circuit circuit = Bench.loop("{\"rail\": \"r\", \"averageW\": 800}", "");
        OperatingPoint.Collapse collapse =
                assertInstanceOf(OperatingPoint.Collapse.class, OperatingPoint.of(circuit, LoadCase.AVERAGE));
        assertEquals("L r", collapse.limiting());
        assertEquals("L", circuit.wiring().directory().name(collapse.unit()));
        assertEquals(0.9, collapse.margin(), 1e-6);
        assertEquals(6, Flows.load(collapse.last().orElseThrow(), "L").volts(), 0.02);
        assertEquals(0.9, OperatingPoint.margin(circuit, LoadCase.AVERAGE), 1e-6);
        assertEquals(
                18,
                OperatingPoint.margin(Bench.loop("{\"rail\": \"r\", \"averageW\": 40}", ""), LoadCase.AVERAGE),
                1e-5);
    }

    @Test
    void solvedOnceAndKept() {
        Circuit circuit = Bench.loop(Bench.amps(4), "");
        OperatingPoint first = OperatingPoint.of(circuit, LoadCase.of(LoadLevel.AVERAGE));
        assertSame(first, OperatingPoint.of(circuit, LoadCase.AVERAGE.peaking(List.of())));
        assertTrue(first != OperatingPoint.of(circuit, LoadCase.PEAK));
    }

    /** Copper at 60 degC has 1 + 0.00393 * 40 times its resistance. */
    @Test
    void warmWires() {
        String warm = Bench.lead("W1", "A-P", "L-S-1").replace("}", ", \"ambientC\": 60}");
        Circuit circuit = Bench.read("", """
                {"units": [{"ref": "A", "type": "PACK12"}, {"ref": "L", "type": "BOX12", "loads": [%s]}],
                 "leads": [%s, %s]}
                """.formatted(Bench.amps(4), warm, Bench.lead("W2", "L-S-2", "A-N")));
        PowerFlow flow = Flows.flow(circuit, LoadCase.AVERAGE.with(WireTemperature.AMBIENT));
        assertEquals(0.16 * (1 + 0.00393 * 40), flow.heat(Flows.wire(flow, "W1")), EXACT);
        assertEquals(0.16, flow.heat(Flows.wire(flow, "W2")), EXACT);
    }

    @Test
    void charge() {
        Circuit circuit = Bench.loop(Bench.amps(0), "");
        assertEquals(
                12.6,
                Flows.load(Flows.flow(circuit, LoadCase.AVERAGE.with(PackCharge.FULL)), "L")
                        .volts(),
                EXACT);
        assertEquals(
                9,
                Flows.load(Flows.flow(circuit, LoadCase.AVERAGE.with(PackCharge.EMPTY)), "L")
                        .volts(),
                EXACT);
        assertEquals(
                11.4,
                Flows.load(Flows.flow(circuit, LoadCase.AVERAGE.with(PackCharge.cell(3.8))), "L")
                        .volts(),
                EXACT);
    }

    /** With the plug pulled the lead still has 12 V, the consumer has none and no number is given for it. */
    @Test
    void pulledPlug() {
        PowerFlow flow = flow(Flows.without(Bench.loop(Bench.amps(4), ""), "pulled", List.of("L-S")));
        assertEquals(12, Flows.volts(flow, "W1@L-S-1", "W2@L-S-2"), EXACT);
        assertTrue(flow.floats(Flows.at(flow, "L-S-1")));
        assertInstanceOf(NodeVoltage.Floating.class, flow.voltage(Flows.at(flow, "L-S-2")));
        assertTrue(
                flow.volts(Flows.at(flow, "L-S-1"), Flows.at(flow, "W2@L-S-2")).isEmpty());
        assertEquals(0, flow.packs().get(0).amps());
        assertEquals(List.of(), flow.loads());
    }

    @Test
    void floatingNetsAreListed() {
        Circuit mated = Bench.loop(Bench.amps(4), "");
        assertEquals(List.of(), FloatingNet.of(flow(mated)));
        PowerFlow pulled = flow(Flows.without(mated, "pulled", List.of("L-S")));
        assertEquals(
                List.of(List.of(Flows.at(pulled, "L-S-1")), List.of(Flows.at(pulled, "L-S-2"))),
                FloatingNet.of(pulled).stream().map(FloatingNet::pins).toList());
        PowerFlow off = flow(Flows.without(mated, "off", List.of("A")));
        assertEquals(2, FloatingNet.of(off).size());
    }

    /** Without its way back a consumer has the supply on both pins and draws nothing. */
    @Test
    void noWayBack() {
        Circuit circuit = Bench.read("", """
                {"units": [{"ref": "A", "type": "PACK12"}, {"ref": "L", "type": "BOX12", "loads": [%s]}],
                 "leads": [%s]}
                """.formatted(Bench.amps(4), Bench.leads("A-P", "L-S-1")));
        PowerFlow flow = flow(circuit);
        assertEquals(ElementState.UNFED, Flows.load(flow, "L").state());
        assertEquals(0, Flows.load(flow, "L").amps());
        assertEquals(0, Flows.load(flow, "L").volts());
        assertEquals(12, Flows.volts(flow, "L-S-1", "A-N"), EXACT);
        assertTrue(flow.floats(Flows.at(flow, "L-S-2")));
    }

    /** Nothing aboard that gives power: nothing has a voltage. */
    @Test
    void withoutAPackAllFloats() {
        PowerFlow flow = flow(Flows.without(Bench.loop(Bench.amps(4), ""), "absent", List.of("A")));
        assertTrue(flow.floats(Flows.at(flow, "L-S-1")));
        assertEquals(List.of(), flow.packs());
    }
}
