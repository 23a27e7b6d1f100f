package ringout.trace.predict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;
import ringout.trace.candidate.FaultKind;

class FaultDictionaryTest {
    private static final Circuit CIRCUIT =
            Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);

    @Test
    void everyCandidateHasItsSignatureAndTheClassesHoldAll() {
        FaultDictionary dictionary = FaultDictionary.of(CIRCUIT);
        assertEquals(Candidates.of(CIRCUIT).all().size(), dictionary.entries().size());
        assertEquals(
                dictionary.entries().size(),
                dictionary.classes().values().stream().mapToInt(List::size).sum());
        dictionary
                .classes()
                .forEach((seen, alike) -> alike.forEach(
                        candidate -> assertEquals(seen, dictionary.entries().get(candidate))));
    }

    /** A member of a redundant pair of returns, or a terminator of a short bus, is not missed by any module. */
    @Test
    void latentFaultsAreThoseThatNoModuleShows() {
        FaultDictionary dictionary = FaultDictionary.of(CIRCUIT);
        Set<String> latent =
                Set.copyOf(dictionary.latent().stream().map(Candidate::title).toList());
        assertTrue(latent.contains("terminator off at GMC, on at LOG"));
        assertFalse(latent.contains("W68 pair open"));
        assertFalse(latent.contains("GMC-PWR not seated"));
        assertEquals((double) latent.size() / dictionary.entries().size(), dictionary.latentShare(), 0.01);
        assertTrue(dictionary.latentShare() > 0.2 && dictionary.latentShare() < 0.6);
        assertTrue(dictionary.latent().stream().noneMatch(c -> c.kind() == FaultKind.DEAD_UNIT));
    }

    @Test
    void whoIsSilentCutsTheListDown() {
        List<Candidate> few = FaultDictionary.of(CIRCUIT).silencing(Set.of("GMC", "GIM"));
        List<String> titles = few.stream().map(Candidate::title).toList();
        assertTrue(titles.contains("W68 pair open"), titles.toString());
        assertTrue(titles.contains("GMC front end dead"));
        assertFalse(titles.contains("LOG-C1 not seated"));
        assertTrue(few.size() < Candidates.of(CIRCUIT).all().size() / 10, "left " + few.size());
        for (int i = 1; i < few.size(); i++) {
            assertTrue(few.get(i - 1).weight() >= few.get(i).weight());
        }
    }

    @Test
    void theSameTwice() {
        Circuit again =
                Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);
        assertEquals(
                FaultDictionary.of(CIRCUIT).entries().toString(),
                FaultDictionary.of(again).entries().toString());
    }
}
