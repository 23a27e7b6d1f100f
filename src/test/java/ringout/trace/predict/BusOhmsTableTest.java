package ringout.trace.predict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.model.End;
import ringout.solve.meter.Reading;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;

/**
 * Ohms between H and L of a chain of five members with terminators at both ends and node inputs of 30 kilohm, power off, for
 * ten true states and five places of the meter. The expected values are the parallel and series sums of 120 ohm and 30
 * kilohm, rounded as technicians say them (60 stands for 59 to 60, 120 for 118 to 120).
 */
class BusOhmsTableTest {
    private static final Circuit CIRCUIT =
            Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);
    private static final List<FieldTest.BusOhms> PLACES = List.of(
            at("FC-C2", FieldTest.BusOhms.Side.MATED),
            at("GMC-C1", FieldTest.BusOhms.Side.MATED),
            at("LOG-C1", FieldTest.BusOhms.Side.INTO_LEAD),
            at("LOG-C1", FieldTest.BusOhms.Side.INTO_UNIT),
            at("GMC-C1", FieldTest.BusOhms.Side.INTO_LEAD));

    private static FieldTest.BusOhms at(String plug, FieldTest.BusOhms.Side side) {
        Site.OnPlug on = (Site.OnPlug) CIRCUIT.wiring().directory().resolve(new End(plug));
        return new FieldTest.BusOhms(on.unit(), on.plug(), side);
    }

    @ParameterizedTest
    @CsvSource({
        "healthy,                            60,  60, 120,  120,  120",
        "terminator off at GMC,             120, 120, 120, 15000,  120",
        "terminator off at FC CAN2,             120, 120, 10000, 120, 7500",
        "terminator on at LOG,               40,  40, 120,   60,   60",
        "'terminator off at GMC, on at LOG', 60,  60, 120,  120,   60",
        "'terminator off at FC CAN2, off at GMC', 6000, 6000, 10000, 15000, 7500",
        "W65 pair open,                     120, 120, 15000, 120, 10000",
        "W66 pair open,                     120, 120, 30000, 120, 15000",
        "W67 pair open,                     120, 120, Infinity, 120, 30000",
        "W68 pair open,                     120, 120, 120, 30000, Infinity"
    })
    void everyTrueStateAtEveryPlace(String state, double fc, double gmc, double lead, double log, double end) {
        double[] expected = {fc, gmc, lead, log, end};
        for (int i = 0; i < expected.length; i++) {
            FieldTest.BusOhms place = PLACES.get(i);
            Reading reading = state.equals("healthy")
                    ? BusMeter.of(CIRCUIT).healthy(place)
                    : BusMeter.of(CIRCUIT).reading(titled(state), place);
            String where = state + " at place " + (i + 1);
            if (Double.isInfinite(expected[i])) {
                assertEquals(new Reading.NoConnection(), reading, where);
            } else {
                double ohm = ((Reading.Ohms) reading).ohm();
                assertEquals(expected[i], ohm, 0.025 * expected[i], where);
                assertEquals(Classes.ohmClass(expected[i]), Classes.ohmClass(ohm), where);
            }
        }
    }

    private static Candidate titled(String title) {
        return Candidates.of(CIRCUIT).all().stream()
                .filter(candidate -> candidate.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no candidate '" + title + "'"));
    }

    @Test
    void allThatTheTableTellsApartAreClassesOfTheirOwn() {
        List<Double> told = List.of(40.0, 60.0, 120.0, 6000.0, 7500.0, 10000.0, 15000.0, 30000.0);
        assertEquals(
                told.size(), told.stream().map(Classes::ohmClass).distinct().count());
    }

    /** One leg open reads as both do. */
    @Test
    void oneLegOpenReadsLikeBoth() {
        Candidate leg = titled("W68 open at LOG-C2-2");
        Candidate pair = titled("W68 pair open");
        for (FieldTest.BusOhms place : PLACES) {
            assertEquals(
                    BusMeter.of(CIRCUIT).reading(pair, place).getClass(),
                    BusMeter.of(CIRCUIT).reading(leg, place).getClass());
            assertEquals(
                    Classes.ohms(BusMeter.of(CIRCUIT).reading(pair, place)).keySet(),
                    Classes.ohms(BusMeter.of(CIRCUIT).reading(leg, place)).keySet());
        }
    }

    @Test
    void theSpreadOfAReadingAddsUpToOneAndSitsWhereTheReadingIs() {
        for (FieldTest.BusOhms place : PLACES) {
            var spread = Classes.ohms(BusMeter.of(CIRCUIT).healthy(place));
            assertEquals(1, spread.values().stream().mapToDouble(p -> p).sum(), 1e-9);
        }
        assertTrue(Classes.ohms(BusMeter.of(CIRCUIT).healthy(PLACES.get(0))).getOrDefault("about 60", 0.0) > 0.95);
    }

    @Test
    void aShortReadsAsOneAndLowAtZeroDoesNotShow() {
        assertTrue(((Reading.Ohms) BusMeter.of(CIRCUIT).reading(titled("W68 H and L touch"), PLACES.get(0))).ohm() < 2);
        Reading grounded = BusMeter.of(CIRCUIT).reading(titled("W68 shorted: LOG-C2-3 with LOG-C2-4"), PLACES.get(0));
        assertEquals("about 60", Classes.ohmClass(((Reading.Ohms) grounded).ohm()));
    }
}
