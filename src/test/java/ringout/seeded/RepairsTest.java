package ringout.seeded;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import ringout.check.Review;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.present.json.EditText;
import ringout.repair.Mending;
import ringout.repair.Repair;

/** The seeded mistakes taken back: what each repair must be is the mistake's own edit turned round, worked out by hand. */
class RepairsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "LW01 | set units[LOG].ports[CAN2].terminator off; set units[GMC].ports[CAN2].terminator on",
                "LW03 | set leads[W41].pins 1>1 2>2 3>3 4>4",
                "LW04 | set units[ESC4].reversed no",
                "LW07 | set leads[W81].pins 1>1 3>3",
                "LW08 | set leads[W13].awg 12; set leads[W23].awg 12",
                "LW09 | set leads[W82].pins 1>1 2>3 3>2 4>4",
                "LW16 | set leads[W26].from PDB-K3N",
                "DM01 | remove leads[W45]; set units[ESC7].ports[CANE].terminator on",
                "DM02 | set units[ESC5].index 5; set units[ESC5].ports[CANE].address 15",
                "DM03 | set units[ESC4].ports[CANE].terminator off",
                "DM10 | set units[FLWL].type FLOW",
                "DM14 | set units[MOT6].propeller CW",
            })
    void theRepairTakesTheMistakeBack(String name, String edits) {
        Mending mending = mending(name);
        assertEquals(1, mending.repairs().size(), name);
        Repair repair = mending.repairs().get(0);
        assertEquals(
                edits,
                String.join("; ", repair.edits().stream().map(EditText::of).toList()));
        assertEquals(Repair.Sureness.ONLY, repair.sureness());
    }

    /** Either of the two units may have the wrong address: the one offered is one of several, and says so. */
    @Test
    void ofSeveralOneIsOfferedAndTheOthersAreCounted() {
        Repair repair = mending("LW02").repairs().get(0);
        assertEquals(
                "set units[LOG].ports[CAN2].address 25",
                EditText.of(repair.edits().get(0)));
        assertEquals(Repair.Sureness.ONE_OF_SEVERAL, repair.sureness());
        assertEquals(1, repair.others());
    }

    /** The lead left out is made as its siblings are; its length nobody has measured. */
    @Test
    void aLeadLeftOutIsMadeLikeItsSiblings() {
        Mending mending = mending("LW17");
        Repair repair = mending.repairs().get(0);
        assertEquals(List.of("new lead NEW1: PDB-K3N to ESC3-N, 12 AWG"), repair.words());
        assertEquals(Repair.Sureness.TO_BE_COMPLETED, repair.sureness());
        assertTrue(
                EditText.of(repair.edits().get(0)).contains("\"lengthMm\": \"?\""),
                EditText.of(repair.edits().get(0)));
    }

    /** Two plugs exchanged show as two findings and are taken back by one change. */
    @Test
    void oneExchangeClearsBothFindings() {
        Mending mending = mending("DM13");
        assertEquals(
                "set leads[W71].to NOZ1-PWR; set leads[W66].to LGT1-PWR",
                String.join(
                        "; ",
                        mending.repairs().get(0).edits().stream()
                                .map(EditText::of)
                                .toList()));
        assertEquals(1, mending.repairs().size());
    }

    static Stream<Mistake> all() {
        return Mistake.all().stream();
    }

    /** Whatever is offered: its finding is gone, nothing of S1 to S3 is new, nothing more is undecided. */
    @ParameterizedTest
    @MethodSource("all")
    void whatIsOfferedClearsItsFindingAndHarmsNothing(Mistake mistake) {
        Aircraft aircraft = mistake.in(Samples.read(mistake.sample())).aircraft();
        Report before = Review.of(aircraft);
        Mending mending = Mending.of(aircraft, before, Review.NO_DAY);
        Report after = Review.of(mending.mended());
        Set<String> now = ids(after, Severity.S5);
        mending.repairs().forEach(repair -> assertTrue(!now.contains(repair.finding()), repair.finding()));
        Set<String> fresh = ids(after, Severity.S3);
        fresh.removeAll(ids(before, Severity.S3));
        assertEquals(Set.of(), fresh);
        boolean added = mending.repairs().stream().anyMatch(r -> r.sureness() == Repair.Sureness.TO_BE_COMPLETED);
        assertTrue(added || after.cannotTell().size() <= before.cannotTell().size());
    }

    private static Mending mending(String name) {
        Mistake mistake = Mistake.all().stream()
                .filter(one -> one.name().equals(name))
                .findFirst()
                .orElseThrow();
        Aircraft aircraft = mistake.in(Samples.read(mistake.sample())).aircraft();
        return Mending.of(aircraft, Review.of(aircraft), Review.NO_DAY);
    }

    private static Set<String> ids(Report report, Severity least) {
        Set<String> ids = new TreeSet<>();
        report.headlines()
                .forEach(headline -> Stream.concat(Stream.of(headline.finding()), headline.alsoExplains().stream())
                        .filter(finding -> finding.severity().atLeast(least))
                        .map(Finding::id)
                        .forEach(ids::add));
        return ids;
    }
}
