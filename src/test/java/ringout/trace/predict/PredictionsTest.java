package ringout.trace.predict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;

class PredictionsTest {
    private static final Circuit CIRCUIT =
            Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);

    private static Candidate titled(String title) {
        return Candidates.of(CIRCUIT).all().stream()
                .filter(candidate -> candidate.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no candidate '" + title + "'"));
    }

    private static TestCard card(String id) {
        return TestDeck.of(CIRCUIT).stream()
                .filter(card -> card.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no test '" + id + "'"));
    }

    private static Prediction of(String title, String test) {
        return Predictions.of(CIRCUIT).of(titled(title), card(test).test());
    }

    /**
     * The worked case of the trade: the gimbal controller is silent, its light steady. Eight candidates, and what is likeliest
     * with each of the tests made there (common practice, no source): ohms at the flight controller, ohms into the pulled
     * lead, volts at its supply, sign of the pair, its settings, volts at the wires of the pulled lead.
     */
    @ParameterizedTest
    @CsvSource({
        "W68 pair open,                                          about 120, open,       as it should, none,     as record, nothing",
        "'W68 in the look-alike socket LOG-AUX, W90 in LOG-C2',  about 120, open,       as it should, none,     as record, 3.3 V on one",
        "H and L swapped in W68,                                 about 60,  about 120,  as it should, negative, as record, 2.5 V on both",
        "GMC front end dead,                                     about 60,  about 120,  as it should, positive, as record, 2.5 V on both",
        "GMC and LOG share an address,                           about 60,  about 120,  as it should, positive, differs,   2.5 V on both",
        "GMC CAN2 at another bit rate,                           about 60,  about 120,  as it should, positive, differs,   2.5 V on both",
        "GMC-PWR-1 contact high-resistance,                      about 60,  about 120,  low,          positive, as record, 2.5 V on both",
        "LOG pass-through open inside at LOG-C2,                 about 120, open,       as it should, none,     as record, nothing"
    })
    void theWorkedCase(
            String title, String ohmsFc, String ohmsLead, String volts, String sign, String settings, String wires) {
        assertEquals(ohmsFc, of(title, "ohms H-L FC-C2 mated").likeliest(), "ohms at FC");
        assertEquals(ohmsLead, of(title, "ohms H-L GMC-C1 into lead").likeliest(), "ohms into the lead");
        assertEquals(volts, of(title, "volts GMC-PWR-1").likeliest(), "volts");
        assertEquals(sign, of(title, "sign GMC-C1").likeliest(), "sign");
        assertEquals(settings, of(title, "settings GMC").likeliest(), "settings");
        assertEquals(wires, of(title, "wire volts GMC-C1").likeliest(), "wires");
    }

    @Test
    void everyPredictionAddsUpToOneOverTheOutcomesOfItsTest() {
        List<Candidate> some = Candidates.of(CIRCUIT).all().stream()
                .filter(candidate -> candidate.id().hashCode() % 40 == 0)
                .toList();
        assertTrue(some.size() > 10);
        for (Candidate candidate : some) {
            for (TestCard card : TestDeck.of(CIRCUIT)) {
                Prediction shown = Predictions.of(CIRCUIT).of(candidate, card.test());
                assertEquals(new HashSet<>(card.outcomes()), shown.outcomes().keySet(), card.id());
                assertEquals(
                        1,
                        shown.outcomes().values().stream().mapToDouble(p -> p).sum(),
                        1e-9,
                        card.id());
                assertTrue(shown.outcomes().values().stream().allMatch(p -> p > 0), card.id());
            }
        }
    }

    @Test
    void pullingTheSwappedUnitLetsTheOthersRecoverAndPullingAnotherDoesNot() {
        assertEquals(
                "rest recovers", of("H and L swapped in W68", "unplug GMC-C1").likeliest());
        assertEquals(
                "rest recovers",
                of("GMC CAN2 at another bit rate", "unplug GMC-C1").likeliest());
        assertEquals("rest recovers", of("GMC holds CAN2 down", "unplug GMC-C1").likeliest());
        assertEquals(
                "rest recovers",
                of("GMC and LOG share an address", "unplug GMC-C1").likeliest());
        assertEquals("no change", of("GMC front end dead", "unplug GMC-C1").likeliest());
        assertEquals("no change", of("W68 pair open", "unplug GMC-C1").likeliest());
    }

    @Test
    void shortsOfALegShowInOhmsToZeroAndInVolts() {
        String grounded = "W68 shorted: LOG-C2-3 with LOG-C2-4";
        assertEquals("short", of(grounded, "ohms to 0V GMC-C1-3").likeliest());
        assertEquals(
                "kilohm and more", of("W68 pair open", "ohms to 0V GMC-C1-3").likeliest());
        assertEquals("0 V", of(grounded, "bus volts GMC-C1-3").likeliest());
        assertEquals("2.5 V", of("W68 H and L touch", "bus volts GMC-C1-2").likeliest());
        assertEquals(
                "about 2.8 V", of("GMC front end dead", "bus volts GMC-C1-2").likeliest());
    }

    @Test
    void theCurrentTellsAUnitThatDrawsNothing() {
        assertEquals("less", of("GMC dead", "supply current").likeliest());
        assertEquals("less", of("RG12 12 gives nothing", "supply current").likeliest());
        assertEquals("as on the sheet", of("W68 pair open", "supply current").likeliest());
    }

    @Test
    void onlyLowRailsAreLoaded() {
        assertTrue(TestDeck.of(CIRCUIT).stream().anyMatch(card -> card.id().startsWith("volts with load GN2-U")));
        assertFalse(TestDeck.of(CIRCUIT).stream().anyMatch(card -> card.id().startsWith("volts with load GMC-PWR")));
        assertEquals("as it should", of("GN2 dead", "volts with load GN2-U-1").likeliest());
        assertEquals(
                "low",
                of("FC-SER2-1 contact high-resistance", "volts with load GN2-U-1")
                        .likeliest());
        // the two halves of the bad contact are parted: only the mated reading shows it
        assertEquals(
                "as it should",
                of("GN2-U-1 contact high-resistance", "volts with load GN2-U-1").likeliest());
    }

    @Test
    void aTestBehindALidCostsTheLid() {
        assertEquals(3 + 12, card("ohms H-L FC-C2 mated").allMinutes());
        assertEquals(3, card("ohms H-L GMC-C1 mated").allMinutes());
        Set<String> ids = new HashSet<>();
        TestDeck.of(CIRCUIT).forEach(card -> assertTrue(ids.add(card.id()), card.id()));
    }

    @Test
    void onlyTellingTestsAreOfferedForTwoCandidates() {
        List<Candidate> two =
                List.of(titled("W68 pair open"), titled("W68 in the look-alike socket LOG-AUX, W90 in LOG-C2"));
        List<String> ids =
                TestDeck.telling(CIRCUIT, two).stream().map(TestCard::id).toList();
        assertTrue(ids.contains("wire volts GMC-C1"), ids.toString());
        assertFalse(ids.contains("ohms H-L GMC-C1 into lead"), ids.toString());
    }
}
