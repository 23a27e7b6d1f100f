package ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Fate;
import ringout.compare.difference.Kind;
import ringout.compare.judge.Judged;
import ringout.compare.judge.Judgement;
import ringout.compare.judge.Retest;
import ringout.finding.Severity;
import ringout.model.Aircraft;

/** What follows from a difference: its gravity, what is usually decided, what to test again, which signatures lapse. */
class JudgementTest {
    private static final Aircraft BASE = Lists.sample("linewarden");

    private static Judged first(String... edits) {
        return judgement(edits).all().get(0);
    }

    private static Judgement judgement(String... edits) {
        return FleetTest.judged(BASE, Lists.edited(BASE, edits));
    }

    private static List<String> tests(Judged judged, Retest.Kind kind) {
        return judged.retests().stream()
                .filter(test -> test.kind() == kind)
                .map(Retest::what)
                .toList();
    }

    @Test
    void aCrossedMotorLeadIsDangerousAndAsksForTheMotorsAndTheConductors() {
        Judged crossed = first("set leads[W41].pins 1>1 2>3 3>2 4>4");
        assertEquals(Kind.CROSSED, crossed.difference().kind());
        assertEquals(Severity.S2, crossed.severity());
        assertEquals("S10", crossed.appear().get(0).code());
        assertEquals(
                List.of(
                        "opens FC-MA-2 from PDB-HA-2",
                        "opens FC-MA-3 from PDB-HA-3",
                        "joins FC-MA-2 with PDB-HA-3",
                        "joins FC-MA-3 with PDB-HA-2"),
                crossed.difference().effects());
        assertEquals(
                List.of(
                        "W41 FC-MA-2 to PDB-HA-3",
                        "W41 FC-MA-3 to PDB-HA-2",
                        "FC-MA-2 to PDB-HA-2, no longer by W41",
                        "FC-MA-3 to PDB-HA-3, no longer by W41"),
                tests(crossed, Retest.Kind.RING_OUT));
        List<String> motors = tests(crossed, Retest.Kind.MOTOR);
        assertEquals(2, motors.size(), motors.toString());
        assertTrue(motors.get(0).contains("motor 2") && motors.get(1).contains("motor 3"), motors.toString());
    }

    @Test
    void aLongerLeadIsKeptAndTheLoopAsksForTheCompass() {
        Judged longer = first("set leads[W03].lengthMm 470");
        assertEquals(Severity.S5, longer.severity());
        assertEquals(Fate.KEEP, longer.fate());
        assertEquals(1, tests(longer, Retest.Kind.COMPASS).size());
        assertEquals(List.of("W03 BAT2-POS-1 to PDB-BP-1"), tests(longer, Retest.Kind.RING_OUT));
    }

    @Test
    void aReturnLessIsTheWorstAndNamesWhatItRaises() {
        Judged gone = first("remove leads[W23]");
        assertEquals(Kind.LEAD_GONE, gone.difference().kind());
        assertEquals(Severity.S1, gone.severity());
        assertEquals(Fate.PUT_BACK, gone.fate());
        assertTrue(gone.appear().stream().anyMatch(finding -> finding.code().equals("P10")));
    }

    @Test
    void aUnitOffIsAStateWhereOneIsDeclared() {
        Judgement off = judgement("remove units[GIM]", "remove leads[W76]");
        Judged gone = off.all().stream()
                .filter(judged -> judged.difference().kind() == Kind.UNIT_GONE)
                .findFirst()
                .orElseThrow();
        assertEquals(Fate.STATE, gone.fate());
        assertEquals("GIM", gone.difference().object());
        Judgement camera = judgement("remove units[CAM]", "remove leads[W74]", "remove leads[W89]");
        assertEquals(
                Fate.PUT_BACK,
                camera.all().stream()
                        .filter(judged -> judged.difference().kind() == Kind.UNIT_GONE)
                        .findFirst()
                        .orElseThrow()
                        .fate());
    }

    @Test
    void whatAFindingNamesAsItsCauseClaimsItAndNotItsNeighbour() {
        Judgement both = judgement("set units[LOG].ports[CAN2].address 24", "set units[LOG].firmware 2.3");
        Difference address = both.all().get(0).difference();
        assertEquals(Kind.ADDRESS, address.kind());
        assertTrue(both.all().get(0).appear().stream()
                .anyMatch(finding -> finding.code().equals("A01")));
        assertEquals(List.of(), both.all().get(1).appear());
    }

    @Test
    void whatAHeadlineExplainsComesWithTheDifferenceThatRaisesTheHeadline() {
        Judgement both = judgement(
                "add leads {\"id\":\"W99\",\"from\":\"LGC-CMD-2\",\"to\":\"FC-A1-2\",\"kind\":\"pulse\"}",
                "set leads[W41].pins 1>1 2>3 3>2 4>4");
        Judged added = both.all().get(0);
        assertEquals("W99", added.difference().object());
        assertTrue(added.appear().stream().anyMatch(finding -> finding.code().equals("P06")));
        assertTrue(added.appear().stream().anyMatch(finding -> finding.code().equals("P04")));
        Judged crossed = both.all().get(1);
        assertEquals("W41", crossed.difference().object());
        assertTrue(crossed.appear().stream().noneMatch(finding -> finding.code().equals("P04")));
    }

    @Test
    void signaturesOfWhatWasTouchedLapse() {
        Aircraft signed = Lists.edited(
                BASE,
                "add record.signatures {\"item\":\"H4\",\"role\":\"inspected\",\"by\":\"CD\",\"date\":\"2026-03-02\"}",
                "add record.signatures {\"item\":\"H2\",\"role\":\"inspected\",\"by\":\"CD\",\"date\":\"2026-03-01\"}",
                "add record.signatures {\"item\":\"W68\",\"role\":\"made\",\"by\":\"AB\",\"date\":\"2026-03-02\"}",
                "add record.signatures {\"item\":\"LW-6\",\"role\":\"released\",\"by\":\"EF\",\"date\":\"2026-03-03\"}");
        Judged longer = FleetTest.judged(signed, Lists.edited(signed, "set leads[W68].lengthMm 460"))
                .all()
                .get(0);
        assertEquals(
                List.of("H4 inspected CD 2026-03-02", "LW-6 released EF 2026-03-03", "W68 made AB 2026-03-02"),
                longer.lapsing());
        assertEquals(
                2,
                tests(longer, Retest.Kind.BUS).stream()
                        .filter(what -> what.contains("mated"))
                        .count());
    }

    @Test
    void aRegulatorOfAnotherTypeAsksForTheVoltsBelowIt() {
        Aircraft smaller = Lists.sample("fleet/tail-4");
        Judged regulator = FleetTest.judged(BASE, smaller).all().stream()
                .filter(judged -> judged.difference().kind() == Kind.UNIT_TYPE)
                .findFirst()
                .orElseThrow();
        List<String> volts = tests(regulator, Retest.Kind.POWER_UP);
        assertEquals("GMC 12 against GMC 0V", volts.get(0));
        assertTrue(volts.get(3).endsWith("CAM, COR, GMC, VTX"), volts.toString());
        assertEquals(List.of("9.3, stage U3, limit 4 A, propellers off"), tests(regulator, Retest.Kind.STEP));
    }
}
