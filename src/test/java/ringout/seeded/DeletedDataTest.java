package ringout.seeded;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Datum;

/**
 * A datum that is not known is never a pass. Each known datum of a clean sample is replaced by "?": no finding of weight
 * may come of it, and a check that reads the datum (it finds something when the datum has an absurd value) must say that it
 * cannot tell, and of what. Every {@value #STEP}th datum is tried; {@code -Ddata=all} tries all of them,
 * {@code -Dchecks=P23,P29} holds these checks only.
 */
class DeletedDataTest {
    private static final int STEP = 23;
    private static final int FIRST = 7;
    private static final int SHOWN = Integer.getInteger("shown", 3);
    private static final List<Check> CHECKS = Catalogue.all().stream()
            .filter(check -> Arrays.asList(System.getProperty("checks", "").split(","))
                    .contains(check.getClass().getAnnotation(CheckInfo.class).code()))
            .toList();

    private final Map<String, List<String>> violations = new TreeMap<>();

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void isNeverAPass(String sample) {
        Aircraft aircraft = Samples.read(sample);
        Report clean = review(aircraft);
        List<Spot> spots = Spot.all(aircraft);
        boolean every = System.getProperty("data", "").equals("all");
        int tried = 0;
        for (int i = every ? 0 : FIRST; i < spots.size(); i += every ? 1 : STEP) {
            look(spots.get(i), clean);
            tried++;
        }
        assertTrue(tried > 20, tried + " data tried");
        assertEquals("", told(), sample + ", " + tried + " data tried");
    }

    private static Report review(Aircraft aircraft) {
        return CHECKS.isEmpty()
                ? Review.of(aircraft)
                : Review.of(Circuit.all(Wiring.of(aircraft)), CHECKS, Review.NO_DAY);
    }

    private void look(Spot spot, Report clean) {
        Report deleted = review(spot.put().apply(Datum.unknown()));
        Set<String> before = findings(clean).map(Finding::id).collect(Collectors.toSet());
        findings(deleted)
                .filter(finding -> finding.severity().atLeast(Severity.S3) && !before.contains(finding.id()))
                .filter(finding -> !Allowed.verdict(finding.code(), spot.field()))
                .forEach(finding -> note(finding.code() + " invents from " + spot.field(), spot, finding.title()));
        Map<String, String> readers = readers(spot, before);
        for (CannotTell open : deleted.cannotTell()) {
            if (!clean.cannotTell().contains(open) && names(open, spot)) {
                readers.keySet().removeIf(code -> open.code().equals(code) || Allowed.anyCheckAsks(spot.field()));
            }
        }
        findings(deleted).filter(finding -> !before.contains(finding.id())).forEach(f -> readers.remove(f.code()));
        readers.forEach((code, absurd) -> {
            if (!Allowed.silence(code, spot.field())) {
                note(code + " passes without " + spot.field(), spot, absurd);
            }
        });
    }

    /**
     * The checks that find something when the datum is absurd, and what. A check that weighs solved figures is one of them only
     * if it finds something when the datum is what it may sensibly be.
     */
    private static Map<String, String> readers(Spot spot, Set<String> before) {
        Map<String, String> readers = new TreeMap<>();
        List<Datum<?>> sensible = Sensible.of(spot);
        for (Datum<?> absurd : Absurd.of(spot.value())) {
            find(spot, absurd, before, code -> sensible.isEmpty() || !Allowed.weighs(code), readers);
        }
        sensible.forEach(other -> find(spot, other, before, Allowed::weighs, readers));
        return readers;
    }

    private static void find(
            Spot spot, Datum<?> other, Set<String> before, Predicate<String> held, Map<String, String> readers) {
        findings(review(spot.put().apply(other)))
                .filter(finding -> !before.contains(finding.id()) && held.test(finding.code()))
                .forEach(finding -> readers.putIfAbsent(
                        finding.code(), spot.value() + " -> " + other.known().orElseThrow() + ": " + finding.title()));
    }

    private static boolean names(CannotTell open, Spot spot) {
        return spot.owners().isEmpty()
                || spot.owners().stream()
                        .anyMatch(owner -> open.missing().contains(owner)
                                || open.objects().stream().anyMatch(object -> object.contains(owner)));
    }

    private void note(String group, Spot spot, String words) {
        violations.computeIfAbsent(group, key -> new ArrayList<>()).add(spot.path() + " " + words);
    }

    /** All of them, grouped by check and field, each with its first examples. */
    private String told() {
        StringBuilder text = new StringBuilder();
        violations.forEach((group, places) -> {
            text.append(group).append(": ").append(places.size()).append('\n');
            places.stream()
                    .limit(SHOWN)
                    .forEach(place -> text.append("    ").append(place).append('\n'));
        });
        return text.toString();
    }

    private static Stream<Finding> findings(Report report) {
        return report.headlines().stream()
                .flatMap(headline -> Stream.concat(Stream.of(headline.finding()), headline.alsoExplains().stream()));
    }
}
