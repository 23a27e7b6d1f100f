package ringout.seeded;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.check.form.CheckInfo;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Place;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.model.edit.Edited;
import ringout.text.Problem;

/**
 * Each mistake of the trade handbook, put alone into the clean list, is found, named as the handbook names it, and nothing
 * else is said of weight. The expectations are the handbook's, not the program's.
 */
class SeededMistakesTest {
    private static final Map<String, Aircraft> CLEAN = new ConcurrentHashMap<>();

    static List<Mistake> mistakes() {
        return Mistake.all();
    }

    private static Aircraft clean(String sample) {
        return CLEAN.computeIfAbsent(sample, Samples::read);
    }

    private static Set<String> catalogue() {
        return Catalogue.all().stream()
                .map(check -> check.getClass().getAnnotation(CheckInfo.class).code())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void allThirtyTwoAreThere() {
        List<String> names = mistakes().stream()
                .filter(mistake -> mistake.head().containsKey("mistake"))
                .map(Mistake::name)
                .toList();
        List<String> wanted =
                Stream.concat(numbered("LW", 17), numbered("DM", 15)).toList();
        assertEquals(wanted, names);
        assertTrue(mistakes().stream().anyMatch(mistake -> mistake.head().containsKey("decoy")));
    }

    /** Written out a second time, so that a slip in a file does not turn its test off. */
    @Test
    void eachNamesTheHeadlineOfTheHandbook() {
        List<String> headlines = mistakes().stream()
                .filter(mistake -> mistake.head().containsKey("mistake"))
                .map(mistake -> mistake.codes("headline").get(0))
                .toList();
        assertEquals(
                List.of(("T07 A01 S10 S12 M13 P19 P06 M17 S07 A08 B01 B05 R02 M02 T02 M16 P10 "
                                + "T09 A01 T06 T08 S12 P10 P22 P22 P06 S03 R03 R02 P04 S13 P28")
                        .split(" ")),
                headlines);
    }

    private static Stream<String> numbered(String prefix, int last) {
        return java.util.stream.IntStream.rangeClosed(1, last).mapToObj(i -> prefix + (i < 10 ? "0" : "") + i);
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void isReadAndChangesTheAircraft(Mistake mistake) {
        assertEquals(
                List.of(),
                mistake.edits().problems().stream().map(Problem::words).toList());
        assertFalse(mistake.edits().edits().isEmpty());
        Aircraft clean = clean(mistake.sample());
        Edited edited = mistake.in(clean);
        assertEquals(List.of(), edited.problems().stream().map(Problem::words).toList());
        assertNotEquals(clean, edited.aircraft());
        // every line does something: without it the aircraft is another
        for (int i = 0; i < mistake.edits().edits().size(); i++) {
            var fewer = new java.util.ArrayList<>(mistake.edits().edits());
            var left = fewer.remove(i);
            assertNotEquals(
                    edited.aircraft(),
                    ringout.model.edit.Edits.apply(clean, fewer).aircraft(),
                    left.path() + " changes nothing");
        }
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void isTheHeadlineAndNothingElseIs(Mistake mistake) {
        Set<String> known = catalogue();
        List<String> wanted = mistake.codes("headline");
        assumeTrue(wanted.stream().anyMatch(known::contains), "check " + wanted + " is not in the catalogue");
        Report report = Review.of(mistake.in(clean(mistake.sample())).aircraft());
        List<Headline> heavy = report.headlines().stream()
                .filter(headline -> headline.finding().severity().atLeast(Severity.S3))
                .toList();
        String all = told(report.headlines());
        Headline first = named(mistake, report);
        assertTrue(wanted.contains(first.finding().code()), "headline " + wanted + " wanted, but" + all);
        assertTrue(
                mistake.severities().contains(first.finding().severity()), mistake.severities() + " wanted, but" + all);
        assertAll(mistake.words().stream()
                .map(words -> () -> assertTrue(
                        words.stream().anyMatch(shown(first.finding())::contains),
                        words + " not in " + shown(first.finding()))));
        List<String> strange = first.alsoExplains().stream()
                .map(Finding::code)
                .filter(code ->
                        !wanted.contains(code) && !mistake.codes("explains").contains(code))
                .toList();
        assertEquals(List.of(), strange, "folded under the headline");
        List<Headline> others = heavy.stream()
                .filter(headline -> !headline.equals(first))
                .filter(headline ->
                        !mistake.codes("others").contains(headline.finding().code()))
                .toList();
        assertEquals(List.of(), others.stream().map(h -> h.finding().code()).toList(), "other headlines:" + all);
        List<String> forbidden = findings(report)
                .map(Finding::code)
                .filter(mistake.codes("never")::contains)
                .toList();
        assertEquals(List.of(), forbidden, "must not be found:" + all);
    }

    /** The first headline; a mistake of S4 stands behind nothing, but remarks of the clean list may stand before it. */
    private static Headline named(Mistake mistake, Report report) {
        assertFalse(report.headlines().isEmpty(), "nothing found");
        Headline first = report.headlines().get(0);
        if (first.finding().severity().atLeast(Severity.S3)) {
            return first;
        }
        return report.headlines().stream()
                .filter(headline ->
                        mistake.codes("headline").contains(headline.finding().code()))
                .findFirst()
                .orElse(first);
    }

    private static String shown(Finding finding) {
        return String.join(
                "\n",
                finding.title(),
                finding.evidence().sum(),
                finding.evidence().path().words(),
                String.join(" ", finding.objects()),
                finding.at().stream().map(Place::words).collect(Collectors.joining("\n")),
                finding.why(),
                finding.meter());
    }

    private static Stream<Finding> findings(Report report) {
        return report.headlines().stream()
                .flatMap(headline -> Stream.concat(Stream.of(headline.finding()), headline.alsoExplains().stream()));
    }

    private static String told(List<Headline> headlines) {
        return headlines.stream()
                .map(Headline::finding)
                .map(finding -> "\n  " + finding.severity() + " " + finding.code() + " " + finding.title())
                .collect(Collectors.joining());
    }
}
