package ringout.trace.predict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Candidates;
import ringout.trace.candidate.Defect;
import ringout.trace.candidate.FaultKind;

class CoverageTest {
    private static final Circuit CIRCUIT =
            Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);

    private static Candidate titled(String title) {
        return Candidates.of(CIRCUIT).all().stream()
                .filter(candidate -> candidate.title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no candidate '" + title + "'"));
    }

    @Test
    void noLineSeesNothingAndRingingOutEveryLeadFindsEveryBreakInAConductor() {
        assertEquals(0, Coverage.of(CIRCUIT, List.of()).share());
        Coverage rung = Coverage.of(CIRCUIT, PlannedLine.ringOut(CIRCUIT));
        for (Candidate candidate : Candidates.of(CIRCUIT).all()) {
            boolean broken = candidate.defect() instanceof Defect.Open || candidate.defect() instanceof Defect.Crossed;
            boolean loose = candidate.kind() == FaultKind.NOT_SEATED;
            if (broken || loose) {
                assertEquals(broken, !rung.seenBy(candidate).isEmpty(), candidate.title());
            }
        }
        assertEquals(List.of("ring out W68"), rung.seenBy(titled("W68 pair open")));
    }

    /** The lesson of the trade: 60 ohm with everything mated does not prove that the terminators are at the ends. */
    @Test
    void theMisplacedTerminatorPassesAllPlannedLinesAndThePulledEndPlugCatchesIt() {
        Coverage planned = Coverage.of(CIRCUIT, PlannedLine.of(CIRCUIT));
        Candidate moved = titled("terminator off at GMC, on at LOG");
        assertTrue(planned.seenBy(moved).isEmpty());
        assertFalse(planned.seenBy(titled("terminator off at GMC")).isEmpty());
        assertTrue(planned.unseen().stream().anyMatch(one -> one.candidate().equals(moved)));
        boolean caught = planned.additions(300).stream()
                .anyMatch(more -> more.card().test() instanceof FieldTest.BusOhms ohms
                        && ohms.side() != FieldTest.BusOhms.Side.MATED
                        && more.catches().contains(moved));
        assertTrue(caught);
    }

    @Test
    void addedLinesCatchWhatTheySay() {
        List<PlannedLine> lines = new ArrayList<>(PlannedLine.of(CIRCUIT));
        lines.addAll(PlannedLine.ringOut(CIRCUIT));
        Coverage all = Coverage.of(CIRCUIT, lines);
        Coverage planned = Coverage.of(CIRCUIT, PlannedLine.of(CIRCUIT));
        assertTrue(all.share() > planned.share());
        assertTrue(all.unseen().size() < planned.unseen().size());
        List<Coverage.Addition> more = all.additions(5);
        assertEquals(5, more.size());
        for (Coverage.Addition addition : more) {
            assertFalse(addition.catches().isEmpty());
            addition.catches()
                    .forEach(candidate -> assertTrue(all.seenBy(candidate).isEmpty()));
        }
    }

    @Test
    void whatFlightDependsOnComesFirst() {
        List<Coverage.Unseen> unseen = Coverage.of(CIRCUIT, List.of()).unseen();
        for (int i = 1; i < unseen.size(); i++) {
            assertTrue(unseen.get(i - 1).severity().compareTo(unseen.get(i).severity()) <= 0);
        }
        assertEquals(Coverage.Severity.FLIGHT_CRITICAL, of(unseen, "ESC1 dead"));
        assertEquals(Coverage.Severity.FLIGHT_CRITICAL, of(unseen, "W31 return open at PDB-O1-2"));
        assertEquals(Coverage.Severity.OTHER, of(unseen, "LED dead"));
    }

    private static Coverage.Severity of(List<Coverage.Unseen> unseen, String title) {
        return unseen.stream()
                .filter(one -> one.candidate().title().equals(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no candidate '" + title + "'"))
                .severity();
    }

    @Test
    void everyTestPointSeparatesMore() {
        TestPoints points = TestPoints.of(CIRCUIT, 6);
        int before = points.classesWithout();
        double ambiguity = points.ambiguityWithout();
        assertEquals(FaultDictionary.of(CIRCUIT).classes().size(), before);
        assertEquals(6, points.points().size());
        for (TestPoints.Point point : points.points()) {
            assertTrue(point.classes() > before, point.card().id());
            assertTrue(point.ambiguity() < ambiguity);
            before = point.classes();
            ambiguity = point.ambiguity();
        }
        assertFalse(points.neverApart().isEmpty());
        points.neverApart().forEach(group -> assertTrue(group.size() > 1));
    }
}
