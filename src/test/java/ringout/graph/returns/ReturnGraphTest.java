package ringout.graph.returns;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ringout.graph.SmallAircraft.circuit;
import static ringout.graph.SmallAircraft.pin;
import static ringout.graph.SmallAircraft.read;

import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.wire.Ampacity;

/** Reachability and widest paths of small 0V graphs; the currents are those of the wire table. */
class ReturnGraphTest {
    private static final String STILL = "\"movingAir\": false, \"loadedInBundle\": 2";

    private static Circuit motor(String black) {
        return circuit(read("""
                {"units": [{"ref": "A", "type": "PACK"}, {"ref": "PDB", "type": "BOARD"}, {"ref": "M", "type": "MOTOR"}],
                 "leads": [{"id": "W1", "from": "A-N", "to": "PDB-BN", "awg": 8, STILL}, {"id": "W2", "from": "A-P", "to": "PDB-BP"},
                           {"id": "W3", "from": "PDB-T1-1", "to": "M-P"}, BLACK
                           {"id": "W5", "from": "M-S-2", "to": "PDB-T2-2", "awg": 26, STILL}]}
                """.replace("BLACK", black).replace("STILL", STILL)));
    }

    @Test
    void hasGroundIsNotHasEnoughGround() {
        Circuit healthy =
                motor("{\"id\": \"W4\", \"from\": \"M-N\", \"to\": \"PDB-T1-2\", \"awg\": 12, " + STILL + "},");
        Circuit broken = motor("");
        for (Circuit circuit : new Circuit[] {healthy, broken}) {
            assertTrue(ReturnGraph.of(circuit).reaches(pin(circuit, "M-N"), pin(circuit, "A-N")));
        }
        assertEquals(new Ampacity(41, 41), width(healthy));
        assertEquals(new Ampacity(2.2, 2.2), width(broken));
        ReturnWay way = ReturnGraph.of(broken)
                .way(pin(broken, "M-N"), pin(broken, "A-N"))
                .orElseThrow();
        assertEquals("W5", way.bottleneck().orElseThrow().lead().id());
        assertEquals(
                "M-N-1 = M-S-2, W5, PDB-T2-2 = PDB-BN-1, W1, A-N-1", way.trail().words());
    }

    private static Ampacity width(Circuit circuit) {
        return ReturnGraph.of(circuit).width(pin(circuit, "M-N"), pin(circuit, "A-N"));
    }

    @Test
    void aSupplyIsNoReturn() {
        Circuit circuit = motor("");
        assertFalse(ReturnGraph.of(circuit).reaches(pin(circuit, "M-P"), pin(circuit, "A-N")));
    }

    @Test
    void aSizeNotKnownLeavesTheWidthOpen() {
        Circuit circuit = motor("{\"id\": \"W4\", \"from\": \"M-N\", \"to\": \"PDB-T1-2\", " + STILL + "},");
        assertEquals(new Ampacity(2.2, 73), width(circuit));
    }

    @Test
    void twoReturnsOfOneLeadCountTogether() {
        Circuit circuit = circuit(read("""
                {"types": [{"name": "TWIN", "plugs": [{"name": "S", "pins": [
                    {"number": "1", "role": "supply in", "inside": "bat"}, {"number": "2", "role": "0V"}, {"number": "3", "role": "0V"}]}]}],
                 "units": [{"ref": "A", "type": "TWIN"}, {"ref": "B", "type": "TWIN"}],
                 "leads": [{"id": "W1", "from": "A-S", "to": "B-S", "awg": 22, "movingAir": false, "loadedInBundle": 3}]}
                """));
        Ampacity width = ReturnGraph.of(circuit).width(pin(circuit, "A-S-2"), pin(circuit, "B-S-3"));
        assertEquals(0.8 * 14, width.low(), 1e-9);
    }
}
