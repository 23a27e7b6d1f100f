package ringout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/** Resistances against ASTM B258 sizes and the resistivity and temperature rule of IEC 60028 (both from memory). */
class ResistivityTest {
    private static Wiring wiring(String lead) {
        Circuit circuit = SmallAircraft.circuit(SmallAircraft.read("""
                {"types": [{"name": "PLUGS", "kind": "unit", "plugs": [
                    {"name": "THIN", "contactRatingA": 3, "pins": [{"number": "1", "role": "supply in", "inside": "a"}]},
                    {"name": "FAT", "contactRatingA": 60, "pins": [{"number": "1", "role": "supply in", "inside": "b"}]},
                    {"name": "SAID", "contactMilliohm": 0.25, "pins": [{"number": "1", "role": "supply in", "inside": "c"}]}]}],
                 "units": [{"ref": "U", "type": "PLUGS"}],
                 "joints": [{"id": "J", "kind": "splice", "milliohm": 1}, {"id": "K", "kind": "splice"}],
                 "leads": [%s]}
                """.formatted(lead)));
        return circuit.wiring();
    }

    private static Wire wire(String more) {
        return wiring("{\"id\": \"W1\", \"from\": \"U-THIN\", \"to\": \"U-FAT\"%s}".formatted(more))
                .wires()
                .get(0);
    }

    /** 4.4 m of 20 AWG: 0.1465 ohm, 0.1696 ohm at 60 degC. */
    @Test
    void conductors() {
        Wire wire = wire(", \"awg\": 20, \"lengthMm\": 4400");
        assertEquals(0.1465, Resistivity.ohm(wire), 1e-4);
        assertEquals(0.1696, Resistivity.ohm(wire, 60), 1e-4);
        assertEquals(Resistivity.ohm(wire), Resistivity.ohm(wire, 20), 0);
        assertEquals(0.010, Resistivity.ohm(wire(", \"areaMm2\": 1, \"lengthMm\": 580")), 1e-12);
    }

    /** 18 AWG, 1.4 m each way and four contacts of 3 milliohm at 12 A: 0.850 V, 7.08 % of 12 V. */
    @Test
    void drop() {
        double there = Resistivity.ohm(wire(", \"awg\": 18, \"lengthMm\": 1400"));
        assertEquals(
                0.850, 12 * (2 * there + 4 * 0.003), 0.003, "the figure takes 21.0 milliohm a metre, 20.95 rounded");
    }

    @Test
    void unknownConductors() {
        assertFalse(Resistivity.isKnown(wire(", \"awg\": 18")));
        assertFalse(Resistivity.isKnown(wire(", \"lengthMm\": 100")));
        assertTrue(Resistivity.isKnown(wire(", \"awg\": 18, \"lengthMm\": 100")));
        assertEquals(0, Resistivity.ohm(wire(", \"awg\": 18")));
    }

    @Test
    void contacts() {
        Wiring wiring = wiring("");
        assertEquals(0.020, Resistivity.contactOhm(wiring, pin(wiring, "U-THIN-1")));
        assertEquals(0.003, Resistivity.contactOhm(wiring, pin(wiring, "U-FAT-1")));
        assertEquals(0.00025, Resistivity.contactOhm(wiring, pin(wiring, "U-SAID-1")), 1e-12);
        assertEquals(0.0005, Resistivity.contactOhm(wiring, pin(wiring, "J")), 1e-12);
        assertEquals(0, Resistivity.contactOhm(wiring, pin(wiring, "K")));
        assertTrue(Resistivity.contactKnown(wiring, pin(wiring, "U-SAID-1")));
        assertFalse(Resistivity.contactKnown(wiring, pin(wiring, "U-THIN-1")));
        assertTrue(Resistivity.contactKnown(wiring, pin(wiring, "J")));
    }

    private static int pin(Wiring wiring, String name) {
        return ProbePoint.find(wiring, name).orElseThrow();
    }
}
