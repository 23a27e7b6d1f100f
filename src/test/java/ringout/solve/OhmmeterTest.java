package ringout.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.State;
import ringout.model.edit.Edits;
import ringout.model.shape.Shape;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.edit.EditReader;
import ringout.solve.network.Resistance;

/**
 * Readings on the chain of the LW-6, held against the trade's table of a five-node bus (120 ohm terminators, 30 kohm node
 * inputs): 120/n in parallel with the inputs, exact to the resistance of leads and contacts.
 */
class OhmmeterTest {
    private static Aircraft linewarden() {
        ReadResult read = AircraftReader.read(Path.of("samples/linewarden"));
        assertTrue(read.ok(), read.problems().toString());
        return read.aircraft();
    }

    static double ohm(Aircraft aircraft, String a, String b, String... pulled) {
        Wiring wiring = Wiring.of(aircraft);
        Shape<State> shape = Shape.of(State.class);
        State state = shape.with(shape.with(shape.empty(), "name", "as flown"), "pulled", List.of(pulled));
        Resistance reading = Ohmmeter.of(Circuit.of(wiring, state))
                .between(
                        ProbePoint.find(wiring, a).orElseThrow(),
                        ProbePoint.find(wiring, b).orElseThrow());
        return reading instanceof Resistance.Ohms ohms ? ohms.value() : Double.POSITIVE_INFINITY;
    }

    @Test
    void healthyBusReadsSixty() {
        double reading = ohm(linewarden(), "FC-C2-H", "FC-C2-L");
        assertTrue(reading > 59 && reading < 61, "" + reading);
    }

    @Test
    void pulledEndPlugReadsOneTerminatorOnBothSides() {
        double unit = ohm(linewarden(), "GMC-C1-H", "GMC-C1-L", "GMC-C1");
        double lead = ohm(linewarden(), "W68@GMC-C1-H", "W68@GMC-C1-L", "GMC-C1");
        assertTrue(unit > 117.5 && unit < 121, "" + unit);
        assertTrue(lead > 117.5 && lead < 121, "" + lead);
    }

    @Test
    void pulledLeadIsOpenWhenTheOtherEndIsPulledToo() {
        assertEquals(Double.POSITIVE_INFINITY, ohm(linewarden(), "W68@GMC-C1-H", "W68@GMC-C1-L", "GMC-C1", "LOG-C2"));
    }

    /**
     * The table of expected readings for this chain. Columns: edits; at FC mated; at GMC mated; lead W67 pulled at LOG, lead
     * side; the same, LOG side; lead W68 pulled at GMC, lead side. Source: the trade's table, values rounded: node inputs
     * pull 60 to 59 and 120 to 118.
     */
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "healthy                     |                                                                        | 60 | 60 | 120 | 120 | 120",
                "GMC terminator missing      | set units[GMC].ports[CAN2].terminator off                              | 120 | 120 | 120 | 15000 | 120",
                "FC terminator missing       | set units[FC].ports[CAN2].terminator none                              | 120 | 120 | 10000 | 120 | 7500",
                "third terminator on at LOG  | set units[LOG].ports[CAN2].terminator on                               | 40 | 40 | 120 | 60 | 60",
                "terminator at LOG, not GMC  | set units[LOG].ports[CAN2].terminator on; set units[GMC].ports[CAN2].terminator off | 60 | 60 | 120 | 120 | 60",
                "both missing                | set units[FC].ports[CAN2].terminator none; set units[GMC].ports[CAN2].terminator off | 6000 | 6000 | 10000 | 15000 | 7500",
                "open FC-GN1                 | remove leads[W65]                                                      | 120 | 120 | 15000 | 120 | 10000",
                "open GN1-IMU                | remove leads[W66]                                                      | 120 | 120 | 30000 | 120 | 15000",
                "open IMU-LOG                | set leads[W67].pins 4>4                                                | 120 | 120 | Infinity | 120 | 30000",
                "open LOG-GMC                | set leads[W68].pins 4>4                                                | 120 | 120 | 120 | 30000 | Infinity",
            })
    void tableOfReadings(
            String name, String edits, double fc, double gmc, double leadSide, double logSide, double endLead) {
        Aircraft aircraft = edited(edits == null ? "" : edits);
        near(fc, ohm(aircraft, "FC-C2-H", "FC-C2-L"), name + " at FC");
        near(gmc, ohm(aircraft, "GMC-C1-H", "GMC-C1-L"), name + " at GMC");
        near(logSide, ohm(aircraft, "LOG-C1-H", "LOG-C1-L", "LOG-C1"), name + " LOG side");
        if (Double.isFinite(leadSide) && !name.contains("IMU-LOG")) {
            near(leadSide, ohm(aircraft, "W67@LOG-C1-H", "W67@LOG-C1-L", "LOG-C1"), name + " lead side");
        }
        if (Double.isFinite(endLead)) {
            near(endLead, ohm(aircraft, "W68@GMC-C1-H", "W68@GMC-C1-L", "GMC-C1"), name + " end lead");
        }
    }

    private static Aircraft edited(String edits) {
        EditReader.Result read = EditReader.read("edit", edits.replace("; ", "\n"));
        assertTrue(read.problems().isEmpty(), read.problems().toString());
        var edited = Edits.apply(linewarden(), read.edits());
        assertTrue(edited.problems().isEmpty(), edited.problems().toString());
        return edited.aircraft();
    }

    private static void near(double expected, double reading, String what) {
        boolean terminated = expected <= 120;
        double low = terminated ? expected * 0.98 : expected * 0.985;
        double high = terminated ? expected * 1.01 : expected * 1.015;
        boolean open = Double.isInfinite(expected) && Double.isInfinite(reading);
        assertTrue(open || (reading >= low && reading <= high), what + ": expected " + expected + ", read " + reading);
    }
}
