package ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ringout.check.Review;
import ringout.compare.difference.Fate;
import ringout.compare.difference.Kind;
import ringout.compare.fleet.Fleet;
import ringout.compare.fleet.FleetRow;
import ringout.compare.fleet.Tail;
import ringout.compare.fleet.Trend;
import ringout.compare.fleet.Trends;
import ringout.compare.judge.Judged;
import ringout.compare.judge.Judgement;
import ringout.compare.judge.Retest;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.present.difference.CompareText;

/** The four tails of the LW-6: what drifted, what of it is dangerous, in that order. */
class FleetTest {
    private static Fleet fleet;

    @BeforeAll
    static void compare() {
        Aircraft base = Lists.sample("fleet/tail-1");
        List<Tail> tails = new ArrayList<>();
        for (int tail = 2; tail <= 4; tail++) {
            Aircraft other = Lists.sample("fleet/tail-" + tail);
            tails.add(Tail.of("tail-" + tail, other, judged(base, other), Trends.of(Wiring.of(other))));
        }
        fleet = Fleet.of(base, "tail-1", Trends.of(Wiring.of(base)), tails);
    }

    static Judgement judged(Aircraft base, Aircraft other) {
        List<Circuit> here = Circuit.all(Wiring.of(base));
        List<Circuit> there = Circuit.all(Wiring.of(other));
        return Judgement.of(here.get(0), Review.of(base), there.get(0), Review.of(other));
    }

    private static List<String> words(Tail tail) {
        return tail.judgement().all().stream()
                .filter(judged -> !judged.difference().kind().ofRecord())
                .map(judged -> judged.severity() + " " + judged.difference().what() + ": "
                        + judged.difference().change())
                .toList();
    }

    @Test
    void theTerminatorAndTheContactComeFirstAndNothingElseIsDangerous() {
        List<FleetRow> dangerous = fleet.dangerous();
        assertEquals(
                List.of("LOG CAN2 terminator and GMC CAN2 terminator", "reading at BAT2-POS to W03@BAT2-POS"),
                dangerous.stream().map(FleetRow::what).toList());
        assertEquals(dangerous, fleet.rows().subList(0, 2));
        assertEquals(List.of("", "on; off", ""), dangerous.get(0).cells());
        assertTrue(dangerous.get(0).finding().orElse("").startsWith("T07 "));
    }

    @Test
    void eachTailTellsItsDrift() {
        assertEquals(
                List.of(
                        "S3 GN1 CAN2 address: 24 -> 25",
                        "S4 LOG firmware: 2.2 -> 2.3",
                        "S4 LED place of the unit: zone right rear arm root, y 60 mm -> zone left rear rail, y -60 mm",
                        "S5 W64 zone: right rear arm root -> left rear rail"),
                words(fleet.tails().get(0)));
        assertEquals(
                List.of("S2 LOG CAN2 terminator: off -> on", "S2 GMC CAN2 terminator: on -> off"),
                words(fleet.tails().get(1)));
        List<Judged> fourth = fleet.tails().get(2).judgement().all();
        assertEquals(
                List.of("W12 and W14", "W22 and W24", "W13 and W15", "W23 and W25"),
                fourth.stream()
                        .filter(judged -> judged.difference().kind() == Kind.ENDS_EXCHANGED)
                        .map(judged -> judged.difference().what())
                        .toList());
        assertTrue(fourth.stream()
                .anyMatch(judged -> judged.difference().kind() == Kind.UNIT_TYPE
                        && judged.difference().change().contains("continuous 8 A -> 6 A")));
        assertFalse(fourth.stream().anyMatch(Judged::dangerous));
    }

    @Test
    void whatIsNotWrittenDownIsSaid() {
        List<Judged> second = fleet.tails().get(0).judgement().all();
        Judged address = of(second, Kind.ADDRESS);
        assertEquals("", address.change().orElse(""));
        assertTrue(of(second, Kind.FIRMWARE).change().orElse("").startsWith("C2-2"));
    }

    private static Judged of(List<Judged> all, Kind kind) {
        return all.stream()
                .filter(judged -> judged.difference().kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theMeterTellsTheTerminatorsApartOnlyIntoTheLead() {
        Judged terminator = of(fleet.tails().get(1).judgement().all(), Kind.TERMINATOR);
        assertEquals(Fate.PUT_BACK, terminator.fate());
        String text = CompareText.of(fleet);
        assertTrue(
                text.contains("GMC-C1, plug pulled, into the lead: 59.8 ohm as it is now, 118.9 ohm when put back"),
                text);
        assertTrue(terminator.retests().stream().anyMatch(test -> test.kind() == Retest.Kind.READ_BACK));
    }

    @Test
    void theContactRunsThroughItsLimit() {
        Trend contact = fleet.tails().get(1).trends().get(0);
        assertEquals(Severity.S2, contact.severity());
        assertEquals(1.6, contact.milliohm(contact.points().get(0)).orElseThrow(), 0.05);
        assertEquals(6.0, contact.milliohm(contact.last()).orElseThrow(), 0.05);
        assertEquals(26, contact.overSince().orElseThrow());
        // 74 mV at 16 h, 118 mV at 26 h: 100 mV at 16 + 10 * 26 / 44
        assertEquals(21.909, contact.crossed().orElseThrow(), 0.001);
        assertTrue(contact.bends());
    }

    @Test
    void theTableIsTheSameWhicheverTailComesFirst() {
        List<Tail> turned = List.of(
                fleet.tails().get(2), fleet.tails().get(1), fleet.tails().get(0));
        Fleet other = Fleet.of(fleet.base(), "tail-1", fleet.baseTrends(), turned);
        assertEquals(
                fleet.dangerous().stream().map(FleetRow::what).toList(),
                other.dangerous().stream().map(FleetRow::what).toList());
        assertEquals(fleet.rows().size(), other.rows().size());
    }
}
