package ringout.trace.candidate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Lead;
import ringout.model.shape.Shape;

class CandidatesTest {
    private static final Circuit LINEWARDEN = circuit(SmallAircraft.sample("linewarden"));

    private static Circuit circuit(Aircraft aircraft) {
        return Circuit.all(Wiring.of(aircraft)).get(0);
    }

    private static Candidate titled(Candidates of, String title) {
        return of.all().stream()
                .filter(candidate -> candidate.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no candidate '" + title + "'"));
    }

    @Test
    void everyConductorCanBreakAndEveryMatedPlugCanComeLoose() {
        Candidates all = Candidates.of(LINEWARDEN);
        long open = all.all().stream()
                .filter(c -> c.kind() == FaultKind.OPEN_CONDUCTOR || c.kind() == FaultKind.RETURN_OPEN)
                .count();
        assertEquals(LINEWARDEN.wiring().wires().size(), open);
        Set<String> plugs = new TreeSet<>();
        for (var wire : LINEWARDEN.wiring().wires()) {
            for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                int unit = LINEWARDEN.wiring().unitOf(pin);
                if (!LINEWARDEN.wiring().directory().isJoint(unit)) {
                    plugs.add(LINEWARDEN
                            .wiring()
                            .plugName(unit, LINEWARDEN.wiring().plugIndex(pin)));
                }
            }
        }
        Set<String> loose = new TreeSet<>();
        all.all().stream()
                .filter(c -> c.kind() == FaultKind.NOT_SEATED)
                .forEach(c -> loose.add(c.repair().object()));
        assertEquals(plugs, loose);
    }

    @Test
    void everyKindOfFaultOccursOnTheTwoSamples() {
        Set<FaultKind> met = EnumSet.noneOf(FaultKind.class);
        for (String sample : List.of("linewarden", "dewmaker")) {
            Candidates.of(circuit(SmallAircraft.sample(sample))).all().forEach(c -> met.add(c.kind()));
        }
        assertEquals(EnumSet.complementOf(EnumSet.of(FaultKind.INTERFERENCE)), without(met, FaultKind.INTERFERENCE));
    }

    private static Set<FaultKind> without(Set<FaultKind> some, FaultKind one) {
        some.remove(one);
        return some;
    }

    @Test
    void identitiesAreUniqueAndDoNotDependOnTheOrderOfRows() {
        Aircraft aircraft = SmallAircraft.sample("linewarden");
        List<Lead> leads = new ArrayList<>(aircraft.leads());
        Collections.reverse(leads);
        Aircraft turned = Shape.of(Aircraft.class).with(aircraft, "leads", leads);
        Set<String> one = ids(Candidates.of(LINEWARDEN), EnumSet.of(FaultKind.WRONG_PORT));
        assertEquals(one, ids(Candidates.of(circuit(turned)), EnumSet.of(FaultKind.WRONG_PORT)));
        assertEquals(
                Candidates.of(LINEWARDEN).all().size(),
                ids(Candidates.of(LINEWARDEN), Set.of()).size());
    }

    /** Wrong ports are named by the check that finds them, which names the first row first. */
    private static Set<String> ids(Candidates of, Set<FaultKind> but) {
        Set<String> ids = new HashSet<>();
        of.all().stream().filter(c -> !but.contains(c.kind())).forEach(c -> ids.add(c.id()));
        return ids;
    }

    @Test
    void whatWasTouchedIsLikelier() {
        Aircraft aircraft = LINEWARDEN.wiring().aircraft();
        Candidates plain = Candidates.of(LINEWARDEN, PriorTable.standard(), Recency.of(aircraft));
        Candidates touched = Candidates.of(
                LINEWARDEN, PriorTable.standard(), Recency.of(aircraft, List.of("w68", "GMC-C1"), false, false));
        String swapped = "H and L swapped in W68";
        assertEquals(0.02, titled(plain, swapped).weight(), 1e-12);
        assertEquals(2, titled(touched, swapped).weight(), 1e-12);
        assertTrue(titled(touched, swapped).because().contains(Circumstance.TOUCHED));
        assertEquals(3, titled(plain, "GMC-C1 not seated").weight(), 1e-12);
        assertEquals(15, titled(touched, "GMC-C1 not seated").weight(), 1e-12);
        assertEquals(
                titled(plain, "IMU-C1 not seated").weight(),
                titled(touched, "IMU-C1 not seated").weight(),
                1e-12);
    }

    @Test
    void theTableOfWeightsIsReadBackAndProblemsAreNamed() {
        assertEquals(
                PriorTable.standard(),
                PriorTable.parse(PriorTable.standard().rows()).table());
        PriorTable.Parsed parsed = PriorTable.parse(List.of(
                List.of("plug not seated", "7,5", "own records"),
                List.of("plug not seated, touched since last good", "2"),
                List.of("gremlins", "1"),
                List.of("open pair", "many"),
                List.of("not in the model", "1")));
        assertEquals(7.5, parsed.table().base(FaultKind.NOT_SEATED));
        assertEquals(2, parsed.table().factor(FaultKind.NOT_SEATED, Circumstance.TOUCHED));
        assertEquals("own records", parsed.table().notes().get("plug not seated"));
        assertEquals(0.05, parsed.table().outside());
        assertEquals(3, parsed.problems().size());
    }

    @Test
    void candidatesKnowTheirRepairAndWhatLiesOverThem() {
        Candidates all = Candidates.of(LINEWARDEN);
        Candidate open = titled(all, "W68 pair open");
        assertEquals(List.of("W68"), open.rows());
        assertEquals("remake or replace lead W68", open.repair().action());
        assertEquals(List.of("top plate"), open.opening().covers());
        assertEquals(12, open.opening().minutes().orElseThrow());
        assertTrue(titled(all, "GMC-C1 not seated").opening().free());
        List<Candidate> together =
                Candidates.byRepair(all.all()).get(open.repair().id());
        assertTrue(together.contains(titled(all, "W68 H and L touch")));
        assertFalse(together.contains(titled(all, "GMC-C1 not seated")));
        assertTrue(Candidates.byOpening(all.all()).get("top plate").contains(open));
    }

    @Test
    void aLidUnderAnotherCostsBoth() {
        Wiring wiring = LINEWARDEN.wiring();
        int board = wiring.directory().find("PDB").orElseThrow();
        int plug = wiring.directory().layout(board).plug("K1P");
        Opening opening = Places.atPlug(LINEWARDEN, board, plug);
        assertEquals(List.of("top plate", "lower lid"), opening.covers());
        assertEquals(25, opening.minutes().orElseThrow());
    }
}
