package ringout.trace.predict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.trace.candidate.Candidates;

/**
 * What the modules show of single faults on the small hexacopter. The rows are the trade's own signature table (common
 * practice, no source): who is silent, who is not steady, who is dark.
 */
class SignaturesTest {
    private static final Circuit CIRCUIT =
            Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);

    private static Signature of(String title) {
        return Candidates.of(CIRCUIT).all().stream()
                .filter(candidate -> candidate.title().equals(title))
                .findFirst()
                .map(Behaviour.of(CIRCUIT)::signature)
                .orElseThrow(() -> new AssertionError("no candidate '" + title + "'"));
    }

    private static void silent(String title, String... units) {
        assertEquals(new TreeSet<>(Set.of(units)), of(title).silent(), title);
    }

    private static void erratic(String title, String... units) {
        assertEquals(new TreeSet<>(Set.of(units)), of(title).erratic(), title);
    }

    private static void dark(String title, String... units) {
        assertEquals(new TreeSet<>(Set.of(units)), of(title).dark(), title);
    }

    @Test
    void aPlugNotSeatedTakesItsUnitAndAllBeyond() {
        silent("LOG-C1 not seated", "LOG", "GMC", "GIM", "COR");
        silent("GMC-C1 not seated", "GMC", "GIM");
        dark("GMC-C1 not seated");
        dark("GMC-PWR not seated", "GMC");
    }

    @Test
    void oneLegOpenIsAsGoodAsBoth() {
        silent("W68 pair open", "GMC", "GIM");
        silent("W68 open at LOG-C2-2", "GMC", "GIM");
        dark("W68 pair open");
    }

    @Test
    void aShortBetweenTheLegsOrOfHStopsTheWholeBus() {
        silent("W68 H and L touch", "GN1", "IMU", "LOG", "GMC", "GIM", "COR");
        silent("GMC holds CAN2 down", "GN1", "IMU", "LOG", "GMC", "GIM", "COR");
    }

    @Test
    void lowAtZeroMayStillWork() {
        silent("W68 shorted: LOG-C2-3 with LOG-C2-4");
        assertTrue(of("W68 shorted: LOG-C2-3 with LOG-C2-4").erratic().contains("GMC"));
    }

    @Test
    void aSwappedPairSilencesTheUnitAndDisturbsTheOthers() {
        silent("H and L swapped in W68", "GMC", "GIM");
        erratic("H and L swapped in W68", "FC", "GN1", "IMU", "LOG");
    }

    @Test
    void settingsShowAsTheTableSays() {
        silent("GMC CAN2 at another bit rate", "GMC", "GIM");
        erratic("GMC CAN2 at another bit rate", "FC", "GN1", "IMU", "LOG");
        erratic("GMC and LOG share an address", "GMC", "LOG");
        silent("GMC and LOG share an address");
    }

    @Test
    void oneTerminatorLessOrMoreSilencesNobodyOnAShortBus() {
        assertTrue(of("terminator off at GMC").latent());
        assertTrue(of("terminator on at LOG").latent());
        assertTrue(of("terminator off at GMC, on at LOG").latent());
        erratic("terminator off at FC CAN2, off at GMC", "FC", "GN1", "IMU", "LOG", "GMC");
    }

    @Test
    void deadMuteAndRestarting() {
        silent("GMC dead", "GMC", "GIM");
        dark("GMC dead", "GMC");
        silent("GMC front end dead", "GMC", "GIM");
        dark("GMC front end dead");
        erratic("GMC restarts over and over", "GMC");
    }

    @Test
    void aPassThroughOpenInsideCutsWhatLiesBeyond() {
        silent("LOG pass-through open inside at LOG-C2", "GMC", "GIM");
        silent("LOG pass-through open inside at LOG-C1", "LOG", "GMC", "GIM", "COR");
    }

    @Test
    void aSupplyThatIsGoneMakesDarkWhatItFeeds() {
        dark("RG12 12 gives nothing", "CAM", "COR", "GMC", "VTX");
        silent("RG12 12 gives nothing", "GMC", "GIM", "COR");
        dark("RG6 6 gives nothing", "LGC", "LGL", "LGR");
    }

    /** The 12 V regulator has no fuse behind it: it limits or stops, and all it feeds is dark; the rest lives. */
    @Test
    void aShortOnARailStopsItsRegulatorAndNothingElse() {
        Signature shorted = of("W72 shorted: RG12-O1-1 with RG12-O1-2");
        assertEquals(Set.of("RG12 12"), shorted.opened());
        assertEquals(new TreeSet<>(Set.of("CAM", "COR", "GMC", "VTX")), shorted.dark());
    }

    /** Each pump of the sprayer has a fuse in its lead: its short takes the pump alone, and the other pump stays. */
    @Test
    void aShortBehindAFuseOpensTheFuseAndTakesNothingElse() {
        Circuit sprayer =
                Circuit.all(Wiring.of(SmallAircraft.sample("dewmaker"))).get(0);
        Signature shorted = Candidates.of(sprayer).all().stream()
                .filter(candidate -> candidate.title().equals("W64 shorted: RG12-O1-1 with RG12-O1-2"))
                .findFirst()
                .map(Behaviour.of(sprayer)::signature)
                .orElseThrow();
        assertEquals(Set.of("fuse in W64"), shorted.opened());
        assertEquals(Set.of("PMPL"), shorted.dark());
    }

    @Test
    void exchangedPhasesTurnTheMotorTheOtherWay() {
        Signature turned = Candidates.of(CIRCUIT).all().stream()
                .filter(candidate -> candidate.title().startsWith("swapped in W51: "))
                .findFirst()
                .map(Behaviour.of(CIRCUIT)::signature)
                .orElseThrow();
        assertEquals(new TreeSet<>(Set.of("MOT1")), turned.erratic());
        assertTrue(turned.silent().isEmpty());
    }
}
