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
import org.junit.jupiter.params.provider.ValueSource;
import ringout.check.Review;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.present.json.EditText;
import ringout.repair.Mending;
import ringout.repair.Repair;

/**
 * The seeded mistakes taken back: what each repair must be is the mistake's own edit turned round, or a smaller change that does
 * the same, worked out by hand.
 */
class RepairsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // the steps of the plan that say the settings go with them
                "LW01 | set units[LOG].ports[CAN2].terminator off; set units[GMC].ports[CAN2].terminator on; "
                        + "set record.steps[1.8].says off; set record.steps[1.9].says on",
                "LW03 | set leads[W41].pins 1>1 2>2 3>3 4>4",
                "LW04 | set units[ESC4].reversed no",
                // 0.2 x 130 A x 6 mm / b^2 is 3 uT at b = 228 mm; 6 mm is as close as the wires go
                "LW05 | set airframe.loops[battery pair].spacingMm 6; set airframe.loops[battery pair].belowMm 230",
                "LW07 | set leads[W81].pins 1>1 3>3",
                "LW08 | set leads[W13].awg 12; set leads[W23].awg 12",
                "LW09 | set leads[W82].pins 1>1 2>3 3>2 4>4",
                // the last step that makes something before the top plate is closed
                "LW11 | set record.steps[7.4].objects W68 W67; remove record.steps[8.4]",
                "LW12 | set airframe.plugOrder BAT1-NEG BAT1-POS BAT2-NEG BAT2-POS",
                // 390 mm x 1.05 = 409.5 mm
                "LW14 | set leads[W72].lengthMm 410",
                "LW16 | set leads[W26].from PDB-K3N",
                "DM01 | remove leads[W45]; set units[ESC7].ports[CANE].terminator on; "
                        + "set record.steps[1.14].objects RADR ESC7; "
                        + "set record.steps[1.15].objects RADF ESC1 ESC2 ESC3 ESC4 ESC5 ESC6 ESC8; "
                        + "set record.steps[3.3].objects W41 W42 W43 W44",
                "DM02 | set units[ESC5].index 5; set units[ESC5].ports[CANE].address 15; set record.steps[1.10].says 15",
                "DM03 | set units[ESC4].ports[CANE].terminator off",
                // the flag turns the motor as three crossed phases would, and nothing is soldered
                "DM05 | set units[ESC6].reversed yes",
                // every unit on the splice gets its return in its own lead again, the splice goes
                "DM06 | set leads[W65].pins 1>1 2>2; set leads[W65].colours 1=RD 2=BK; "
                        + "set leads[W82].pins 1>1 2>2 3>3; set leads[W82].colours 1=RD 2=WH 3=BK; "
                        + "remove leads[W65r]; remove leads[W65s]; remove leads[W82r]; remove joints[S65]; "
                        + "set record.steps[4.3].objects W64 W65 W66 W67 W68 W69 W70; "
                        + "set record.steps[4.5].objects W79 W80 W81 W82 W83 W84 W85 W86 W87",
                // 12 AWG stands 20 A of W64's fuse, drops 3 % at most, and the second fuse goes
                "DM07 | set leads[W64].awg 12; set leads[W64b].awg 12; set leads[W64r].awg 12; "
                        + "set leads[W64b].fuseA n/a",
                "DM09 | remove leads[W88]; set record.steps[2.6].objects W57 W58 W59 W60 W61 W62 W63",
                "DM10 | set units[FLWL].type FLOW",
                "DM14 | set units[MOT6].propeller CW; set record.steps[9.1].objects MOT2 MOT3 MOT7 MOT6; "
                        + "set record.steps[9.2].objects MOT1 MOT4 MOT5 MOT8",
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

    /** Where several changes do as well, the last one is offered, the others are counted. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                // either of the two units may have the wrong address
                "LW02 | 1 | set units[LOG].ports[CAN2].address 25; set record.steps[1.4].says 25",
                // M1 and M4 opposite each other on K1, M2 and M5 on K2, M3 and M6 on K3; the names of clamps are free
                "LW13 | 2 | set leads[W22].from PDB-K2N; set leads[W24].from PDB-K1N; set leads[W12].from PDB-K2P; "
                        + "set leads[W14].from PDB-K1P; set leads[W23].from PDB-K3N; set leads[W25].from PDB-K2N; "
                        + "set leads[W13].from PDB-K3P; set leads[W15].from PDB-K2P",
                // either input on either outlet of the other regulator
                "DM11 | 3 | set leads[W60].from RG5B-O2",
                "DM12 | 2 | set leads[W44].to ESC7-C1; set leads[W48].to ESC6-C1; set leads[W45].from ESC7-C2; "
                        + "set leads[W49].from ESC6-C2; set buses[CAN-A].members FC:CANA ESC1:CANE ESC3:CANE ESC5:CANE "
                        + "ESC7:CANE; set buses[CAN-B].members FC:CANB ESC2:CANE ESC4:CANE ESC6:CANE ESC8:CANE; "
                        + "set messages[controller state 7].bus CAN-A; set messages[controller state 6].bus CAN-B",
            })
    void ofSeveralOneIsOfferedAndTheOthersAreCounted(String name, int others, String edits) {
        Mending mending = mending(name);
        assertEquals(0, grave(mending.after()), name);
        Repair repair = mending.repairs().get(0);
        assertEquals(
                edits,
                String.join("; ", repair.edits().stream().map(EditText::of).toList()));
        assertEquals(Repair.Sureness.ONE_OF_SEVERAL, repair.sureness());
        assertEquals(others, repair.others());
    }

    /** Two thin leads are two mistakes: 14 AWG for 12 A over 1.4 m within 5 %, 18 AWG for the lamp, as in the clean list. */
    @Test
    void twoMistakesAreTwoRepairs() {
        assertEquals(
                List.of("set leads[W65].awg 14", "set leads[W66].awg 18"),
                mending("DM08").repairs().stream()
                        .map(repair -> EditText.of(repair.edits().get(0)))
                        .toList());
    }

    /**
     * Where no change of the list can honestly be offered.
     *
     * <ul>
     *   <li>LW06: what the gimbal draws is a fact and no choice; every outlet of 12 V hangs on the one regulator, the list
     *       knows no larger type and the board has no free outlet for a second one; to declare that the loads never peak together
     *       would be a claim about the flight.
     *   <li>DM15: the voltage of a pack is measured; what is wrong is put right with a charger, and then measured again.
     *   <li>LW10: the list does not say which addresses the straps of a rangefinder give.
     *   <li>DM04: the branch cannot be cut to 0.3 m, its way is 0.84 m; to lead the trunk through the radar means two leads of
     *       other lengths and a tee less, which the search does not make up yet.
     * </ul>
     */
    @ParameterizedTest
    @ValueSource(strings = {"LW06", "LW10", "DM04", "DM15"})
    void whatTheListCannotTellIsNotMadeUp(String name) {
        Mending mending = mending(name);
        assertEquals(List.of(), mending.repairs().stream().map(Repair::words).toList());
        assertEquals(1, grave(mending.after()));
        String decide = mending.after().headlines().get(0).finding().meter();
        assertTrue(decide.matches(".*(clamp a meter|volts across|unplug one|tape along).*"), decide);
    }

    private static long grave(Report report) {
        return report.headlines().stream()
                .filter(headline -> headline.finding().severity().atLeast(Severity.S3))
                .count();
    }

    /** The lead left out is made as its siblings are; its length nobody has measured. */
    @Test
    void aLeadLeftOutIsMadeLikeItsSiblings() {
        Mending mending = mending("LW17");
        Repair repair = mending.repairs().get(0);
        assertEquals("new lead NEW1: PDB-K3N to ESC3-N, 12 AWG", repair.words().get(0));
        assertEquals(Repair.Sureness.TO_BE_COMPLETED, repair.sureness());
        assertTrue(
                EditText.of(repair.edits().get(0)).contains("\"lengthMm\": \"?\""),
                EditText.of(repair.edits().get(0)));
    }

    /** The two open plugs of one family are joined; wire and length are to be chosen. */
    @Test
    void twoOpenPlugsGetTheirLead() {
        Repair repair = mending("LW15").repairs().get(0);
        assertEquals("new lead NEW1: PMON-SNS to FC-SNS", repair.words().get(0));
        assertEquals(Repair.Sureness.TO_BE_COMPLETED, repair.sureness());
    }

    /** Two plugs exchanged show as two findings and are taken back by one change. */
    @Test
    void oneExchangeClearsBothFindings() {
        Mending mending = mending("DM13");
        assertEquals(
                "set leads[W71].to NOZ1-PWR; set leads[W66].to LGT1-PWR; "
                        + "set leads[W71].toKey 52 V; set leads[W66].toKey 12 V",
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

    /** Whatever is offered: of its finding at most a note is left, nothing of S1 to S3 is new, nothing more is undecided. */
    @ParameterizedTest
    @MethodSource("all")
    void whatIsOfferedClearsItsFindingAndHarmsNothing(Mistake mistake) {
        Aircraft aircraft = mistake.in(Samples.read(mistake.sample())).aircraft();
        Report before = Review.of(aircraft);
        Mending mending = Mending.of(aircraft, before, Review.NO_DAY);
        Report after = Review.of(mending.mended());
        Set<String> now = ids(after, Severity.S3);
        mending.repairs().forEach(repair -> assertTrue(!now.contains(repair.finding()), repair.finding()));
        Set<String> fresh = ids(after, Severity.S3);
        fresh.removeAll(ids(before, Severity.S3));
        assertEquals(Set.of(), fresh);
        boolean added = mending.repairs().stream().anyMatch(r -> r.sureness() == Repair.Sureness.TO_BE_COMPLETED);
        assertTrue(added || undecided(after) <= undecided(before));
    }

    /** A plug that comes free by a repair may be one whose key nobody gave: that is for who plugs it to see. */
    private static long undecided(Report report) {
        return report.cannotTell().stream()
                .filter(open -> !open.code().equals("M07") && !open.code().equals("M08"))
                .count();
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
