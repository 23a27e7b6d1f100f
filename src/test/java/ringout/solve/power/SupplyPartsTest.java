package ringout.solve.power;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.solve.dc.ElementState;

/** Packs, parts in line and regulators in small supplies, against arithmetic done by hand. */
class SupplyPartsTest {
    private static final double EXACT = 1e-9;

    /** The output resistance that a regulator without one gets makes this much difference. */
    private static final double STIFF = 1e-3;

    private static final String A_L =
            "{\"ref\": \"A\", \"type\": \"PACK12\"}, {\"ref\": \"L\", \"type\": \"BOX12\", \"loads\": [%s]}";

    private static PowerFlow flow(String inline, String units, String... ends) {
        return Flows.flow(
                Bench.read(inline, "{\"units\": [%s], \"leads\": [%s]}".formatted(units, Bench.leads(ends))),
                LoadCase.AVERAGE);
    }

    private static Part part(PowerFlow flow, String name) {
        return flow.circuit().wiring().parts().stream()
                .filter(p ->
                        p.origin() instanceof Part.Inner i && i.part().name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** 24 V through 2 x 20 + 3 x 10 + 2 x 5 = 80 milliohm. */
    @Test
    void packsInSeries() {
        PowerFlow flow = flow(
                "",
                A_L.formatted(Bench.amps(5)) + ", {\"ref\": \"B\", \"type\": \"PACK12\"}",
                "A-P",
                "B-N",
                "B-P",
                "L-S-1",
                "L-S-2",
                "A-N");
        assertEquals(23.6, Flows.load(flow, "L").volts(), EXACT);
        assertEquals(5, flow.packs().get(0).amps(), EXACT);
        assertEquals(5, flow.packs().get(1).amps(), EXACT);
    }

    /** Branches of 40 milliohm (pack and two wires) and of 60 (two wires of 10 more by a second lead) share 60 to 40. */
    @Test
    void packsInParallel() {
        String units = A_L.formatted(Bench.amps(5)) + ", {\"ref\": \"B\", \"type\": \"PACK12\"},"
                + " {\"ref\": \"K\", \"type\": \"BAR\"}, {\"ref\": \"M\", \"type\": \"BAR\"}";
        PowerFlow flow = flow(
                "", units, "A-P", "K-P1", "A-N", "K-N1", "B-P", "M-P1", "B-N", "M-N1", "M-P2", "K-P2", "M-N2", "K-N2",
                "K-P3", "L-S-1", "K-N3", "L-S-2");
        assertEquals(3, flow.packs().get(0).amps(), EXACT);
        assertEquals(2, flow.packs().get(1).amps(), EXACT);
        assertEquals(12 - 3 * 0.04 - 5 * 0.03, Flows.load(flow, "L").volts(), EXACT);
    }

    /** A sense resistor of 10 milliohm more: 12 - 4 * 0.07 V with the third wire; its heat is I^2 R. */
    @Test
    void senseResistor() {
        PowerFlow flow = inline(
                "{\"name\": \"X\", \"kind\": \"sense resistor\", \"from\": \"in\", \"to\": \"out\", \"rating\": {\"milliohm\": 10}}");
        assertEquals(11.72, Flows.load(flow, "L").volts(), EXACT);
        assertEquals(4, flow.amps(part(flow, "X")), EXACT);
        assertEquals(0.16, flow.heat(part(flow, "X")), EXACT);
    }

    /** A fuse and a closed switch of no known resistance carry the current and drop nothing. */
    @Test
    void fuseAndSwitch() {
        for (String kind : List.of("fuse", "switch", "link")) {
            PowerFlow flow =
                    inline("{\"name\": \"X\", \"kind\": \"%s\", \"from\": \"in\", \"to\": \"out\"}".formatted(kind));
            assertEquals(11.76, Flows.load(flow, "L").volts(), EXACT, kind);
            assertEquals(4, flow.amps(part(flow, "X")), EXACT, kind);
            assertEquals(ElementState.WORKING, flow.state(part(flow, "X")));
        }
    }

    @Test
    void openSwitch() {
        PowerFlow closed = inline("{\"name\": \"X\", \"kind\": \"switch\", \"from\": \"in\", \"to\": \"out\"}");
        PowerFlow open = Flows.flow(Flows.without(closed.circuit(), "open", List.of("I:X")), LoadCase.AVERAGE);
        assertTrue(open.loads().stream().noneMatch(LoadFigure::fed));
        assertEquals(0, open.packs().get(0).amps());
        assertEquals(0, open.amps(part(open, "X")));
    }

    /** 0.5 V of a diode and 10 milliohm of it. */
    @Test
    void diode() {
        PowerFlow flow = inline(
                "{\"name\": \"X\", \"kind\": \"diode\", \"from\": \"in\", \"to\": \"out\", \"rating\": {\"forwardV\": 0.5, \"milliohm\": 10}}");
        assertEquals(11.22, Flows.load(flow, "L").volts(), EXACT);
        assertEquals(4, flow.amps(part(flow, "X")), EXACT);
        assertEquals(4 * 0.54, flow.heat(part(flow, "X")), EXACT);
        PowerFlow reversed = inline(
                "{\"name\": \"X\", \"kind\": \"diode\", \"from\": \"out\", \"to\": \"in\", \"rating\": {\"forwardV\": 0.5}}");
        assertEquals(ElementState.BLOCKING, reversed.state(part(reversed, "X")));
        assertEquals(0, Flows.load(reversed, "L").amps());
    }

    private static PowerFlow inline(String part) {
        return flow(
                part,
                A_L.formatted(Bench.amps(4)) + ", {\"ref\": \"I\", \"type\": \"INLINE\"}",
                "A-P",
                "I-A",
                "I-B",
                "L-S-1",
                "L-S-2",
                "A-N");
    }

    /** 4 A at 5 V is 20 W, at half efficiency 40 W, and 0.1 A at rest: I = 0.1 + 40 / (12 - 0.04 I). */
    @Test
    void regulator() {
        Circuit circuit = Bench.read("", "0V", "regulator", regulated());
        PowerFlow flow = Flows.flow(circuit, LoadCase.AVERAGE);
        RegulatorFigure figure = Flows.regulator(flow, "R");
        assertEquals(5, figure.outVolts(), STIFF);
        assertEquals(4, figure.outAmps(), EXACT);
        double in = 12 - 0.04 * figure.inAmps();
        assertEquals(in, figure.inVolts(), EXACT);
        assertEquals(0.1 + figure.outVolts() * 4 / 0.5 / in, figure.inAmps(), EXACT);
        assertEquals(in * figure.inAmps() - 4 * figure.outVolts(), figure.heat(), 1e-6);
        assertEquals(ElementState.WORKING, figure.state());
        assertEquals(figure.outVolts() - 4 * 0.03, Flows.load(flow, "L").volts(), EXACT);
    }

    /** Behind an isolated converter nothing has a voltage against the pack. */
    @Test
    void isolatedConverter() {
        Circuit circuit = Bench.read("", "0V iso", "isolated converter", regulated());
        PowerFlow flow = Flows.flow(circuit, LoadCase.AVERAGE);
        assertTrue(flow.volts(Flows.at(flow, "R-OUT-1"), Flows.at(flow, "A-N")).isEmpty());
        assertEquals(5, Flows.volts(flow, "R-OUT-1", "R-OUT-2"), STIFF);
        assertEquals(4, Flows.load(flow, "L").amps(), EXACT);
        assertEquals(12, Flows.volts(flow, "R-IN-1", "A-N"), 0.3);
    }

    private static String regulated() {
        return "{\"units\": [%s, {\"ref\": \"R\", \"type\": \"REG5V\"}], \"leads\": [%s]}"
                .formatted(
                        A_L.formatted(Bench.amps(4)),
                        Bench.leads("A-P", "R-IN-1", "A-N", "R-IN-2", "R-OUT-1", "L-S-1", "R-OUT-2", "L-S-2"));
    }

    /** A splice of 4 milliohm: each conductor has half of it; currents add up in it. */
    @Test
    void splice() {
        Circuit circuit = Bench.read("", """
                {"units": [%s, {"ref": "M", "type": "BOX12", "loads": [%s]}],
                 "joints": [{"id": "J", "kind": "splice", "milliohm": 4}], "leads": [%s]}
                """.formatted(
                        A_L.formatted(Bench.amps(3)),
                        Bench.amps(2),
                        Bench.leads("A-P", "J", "J", "L-S-1", "J", "M-S-1", "L-S-2", "A-N", "M-S-2", "A-N")));
        PowerFlow flow = Flows.flow(circuit, LoadCase.AVERAGE);
        assertEquals(5, flow.amps(Flows.wire(flow, "W1")), EXACT);
        assertEquals(3, flow.amps(Flows.wire(flow, "W2")), EXACT);
        assertEquals(2, flow.amps(Flows.wire(flow, "W3")), EXACT);
        double atJoint = 12 - 5 * (0.020 + 0.010 + 0.002);
        assertEquals(
                atJoint - 3 * (0.002 + 0.010 + 0.005 + 0.005 + 0.010),
                Flows.load(flow, "L").volts(),
                EXACT);
    }
}
