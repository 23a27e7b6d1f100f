package ringout.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.MemoryFolder;

/** A waiver holds only with a reason, names and an end, and lapses by itself. Rules: common practice, no source. */
class WaiversTest {
    private static final String BUS = """
            {"name":"x","types":[{"name":"N","plugs":[
            {"name":"C1","pins":[{"number":"1","role":"can H","inside":"CAN"},{"number":"2","role":"can L","inside":"CAN"}]}],
            "ports":[{"name":"CAN","terminator":"switch"}]}],
            "units":[{"ref":"A","type":"N","ports":[{"port":"CAN","address":7,"terminator":"on"}]},
            {"ref":"B","type":"N","what":"%s","ports":[{"port":"CAN","address":7,"terminator":"on"}]}],
            "leads":[{"id":"W1","from":"A-C1","to":"B-C1","lengthMm":500}],
            "waivers":[%s]}
            """;
    private static final String GOOD =
            "\"reason\":\"both answer to one call, wanted for the bench rig\",\"by\":\"A. One\",\"second\":\"B. Two\"";

    private static Report report(String what, String waiver, String today) {
        ReadResult read =
                AircraftReader.read(MemoryFolder.named("x").with("aircraft.json", BUS.formatted(what, waiver)));
        assertTrue(read.ok(), read.problems().toString());
        return Review.of(Circuit.all(Wiring.of(read.aircraft())), Catalogue.all(), today);
    }

    private static String waiver(String rest) {
        return "{\"finding\":\"A01:a+b\"," + rest + "}";
    }

    @Test
    void holdsWithReasonNamesAndEnd() {
        Report report = report("x", waiver(GOOD + ",\"ends\":\"2030-01-01\""), "2029-12-31");
        assertEquals(1, report.waived().size());
        assertEquals(0, report.headlines().size());
        assertEquals(0, report.lapsed().size());
    }

    @Test
    void endsByItsDay() {
        Report report = report("x", waiver(GOOD + ",\"ends\":\"2030-01-01\""), "2030-01-02");
        assertEquals(1, report.headlines().size());
        assertEquals("ended on 2030-01-01", report.lapsed().get(0).why());
    }

    @Test
    void refusesAShortReason() {
        String rest = "\"reason\":\"OK\",\"by\":\"A. One\",\"second\":\"B. Two\",\"ends\":\"2030-01-01\"";
        assertTrue(report("x", waiver(rest), "").lapsed().get(0).why().startsWith("refused: give a reason"));
    }

    @Test
    void wantsTwoDifferentNames() {
        String one =
                "\"reason\":\"both answer to one call, wanted for the bench rig\",\"by\":\"A. One\",\"ends\":\"2030-01-01\"";
        assertTrue(report("x", waiver(one), "").lapsed().get(0).why().contains("two names"));
        String same = one + ",\"second\":\"A. One\"";
        assertTrue(report("x", waiver(same), "").lapsed().get(0).why().contains("another person"));
    }

    @Test
    void wantsAnEnd() {
        assertTrue(report("x", waiver(GOOD), "").lapsed().get(0).why().contains("no end"));
    }

    @Test
    void lapsesWhenARowChanges() {
        String print = report("x", waiver(GOOD), "").headlines().get(0).fingerprint();
        String rest = GOOD + ",\"ends\":\"2030-01-01\",\"fingerprint\":\"" + print + "\"";
        assertEquals(1, report("x", waiver(rest), "").waived().size());
        Report changed = report("another box", waiver(rest), "");
        assertEquals(0, changed.waived().size());
        assertTrue(changed.lapsed().get(0).why().contains("has changed"));
    }

    @Test
    void tellsOfAWaiverForNothing() {
        String other = "{\"finding\":\"A01:a+z\"," + GOOD + ",\"ends\":\"2030-01-01\"}";
        assertEquals(
                "there is no such finding now",
                report("x", other, "").lapsed().get(0).why());
    }
}
