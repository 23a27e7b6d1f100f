package ringout.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;

/** Rankings worked out by hand: 16 for a verdict of S1, then 8, 4, 2, 1, over the minutes. */
class NextDataTest {
    private static final Map<String, Severity> SEVERITY = Map.of(
            "P04", Severity.S1,
            "P19", Severity.S2,
            "T08", Severity.S2,
            "T11", Severity.S2,
            "M02", Severity.S3,
            "X02", Severity.S4,
            "M13", Severity.S5);

    private static CannotTell open(String code, String missing, int minutes, String... objects) {
        return new CannotTell(code, "name", List.of(objects), missing, "get " + missing, minutes, List.of("as flown"));
    }

    private static List<NextDatum> ranked(List<CannotTell> open) {
        return NextData.of(open, code -> Objects.requireNonNull(SEVERITY.get(code)));
    }

    /** Each as "words, minutes, verdicts, weight, codes". */
    private static List<String> told(List<CannotTell> open) {
        return ranked(open).stream()
                .map(next -> next.missing() + " | " + next.minutes() + " min | " + next.verdicts() + " | "
                        + next.weight() + " | " + String.join(" ", next.codes()))
                .toList();
    }

    /**
     * The peak opens two checks: (16 + 8) / 5 = 4.8 a minute. The length of W2 alone: 8 / 2 = 4; of all three: 16 / 6 = 2.7.
     * With W2 known the other two take 4 min and bring 8: 2 a minute, still more than the label with 2 / 2 = 1.
     */
    private static List<CannotTell> five() {
        return List.of(
                open("P04", "peak current of PUMP", 5, "PUMP"),
                open("P19", "peak current of PUMP", 5, "PUMP"),
                open("T08", "length of W1, W2, W3", 6, "W1", "W2", "W3"),
                open("T11", "length of W2", 2, "W2"),
                open("X02", "label of W9", 2, "W9"));
    }

    @Test
    void aDatumOfSeveralChecksCountsForAllAndTheNextIsRankedAsIfItWereKnown() {
        assertEquals(
                List.of(
                        "peak current of PUMP | 5 min | 2 | 24 | P04 P19",
                        "length of W2 | 2 min | 1 | 8 | T11",
                        "length of W1, W3 | 4 min | 1 | 8 | T08"),
                told(five()));
        assertEquals("get length of W1, W2, W3", ranked(five()).get(2).how());
    }

    @Test
    void theOrderOfTheLinesDoesNotMatter() {
        List<CannotTell> turned = new ArrayList<>(five());
        Collections.reverse(turned);
        assertEquals(
                told(five()).stream()
                        .map(line -> line.substring(0, line.lastIndexOf('|')))
                        .toList(),
                told(turned).stream()
                        .map(line -> line.substring(0, line.lastIndexOf('|')))
                        .toList());
    }

    /** All three lengths: (4 + 8) / 6 = 2; that of W2 alone: 4 / 2 = 2. Of equal rates the one that decides more. */
    @Test
    void ofEqualRatesTheOneThatDecidesMoreComesFirst() {
        assertEquals(
                List.of("length of W1, W2, W3 | 6 min | 2 | 12 | M02 T08"),
                told(List.of(
                        open("M02", "length of W2", 2, "W2"),
                        open("T08", "length of W1, W2, W3", 6, "W1", "W2", "W3"))));
    }

    /** 16 / 40 = 0.4 against 1 / 1: the minutes weigh as much as the severity. */
    @Test
    void aQuickDatumOfLittleWeightMayComeBeforeALongOne() {
        assertEquals(
                List.of("spacing of PAIR | 1 min | 1 | 1 | M13", "resistance of PLUG | 40 min | 1 | 16 | P04"),
                told(List.of(
                        open("P04", "resistance of PLUG", 40, "PLUG"), open("M13", "spacing of PAIR", 1, "PAIR"))));
    }

    /** Words that do not name their objects are one datum, whatever it is about; two checks ask 2 and 3 min: 3 count. */
    @Test
    void wordsWithoutObjectsAreOneDatum() {
        assertEquals(
                List.of("order of the plugs | 3 min | 2 | 24 | P04 T08"),
                told(List.of(
                        open("P04", "order of the plugs", 2, "BAT"),
                        open("T08", "order of the plugs", 3, "BAT1", "BAT2"))));
    }

    @Test
    void nothingOpenNothingToGet() {
        assertEquals(List.of(), told(List.of()));
    }
}
