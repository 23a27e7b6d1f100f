package ringout.seeded;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.check.form.CheckInfo;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Unit;

/** The samples are what they say they are, and the clean ones are clean. */
class CleanSamplesTest {
    /** Every wire of a lead counts, also one that ends on unused contacts at both sides. */
    @ParameterizedTest
    @CsvSource({"linewarden, 38, 59, 145, 26", "dewmaker, 47, 75, 170, 22"})
    void hasItsSize(String sample, int units, int leads, int conductors, int types) {
        Aircraft aircraft = Samples.read(sample);
        assertEquals(units, aircraft.units().size());
        assertEquals(leads, aircraft.leads().size());
        assertEquals(conductors, Wiring.of(aircraft).wires().size());
        assertEquals(types, aircraft.units().stream().map(Unit::type).distinct().count());
        assertEquals(List.of(), Wiring.of(aircraft).looseEnds());
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void hasNoFindingOfWeight(String sample) {
        Report report = Review.of(Samples.read(sample));
        List<String> heavy = findings(report)
                .filter(finding -> finding.severity().atLeast(Severity.S3))
                .map(finding -> finding.code() + " " + finding.title())
                .toList();
        assertEquals(List.of(), heavy);
        assertTrue(report.passed() > 0);
        int lines = report.headlines().size() + report.cannotTell().size();
        assertTrue(lines < 10, lines + " lines: " + report.cannotTell());
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void staysSilentWhereItOnlyLooksWrong(String sample) throws IOException {
        Aircraft aircraft = Samples.read(sample);
        List<Finding> said = findings(Review.of(aircraft)).toList();
        List<String> names = new ArrayList<>();
        aircraft.units().forEach(unit -> names.add(unit.ref()));
        aircraft.leads().forEach(lead -> names.add(lead.id()));
        aircraft.buses().forEach(bus -> names.add(bus.name()));
        List<String[]> silent = Files.readString(
                        Mistake.FOLDER.resolve(sample).resolve("silent.txt"), StandardCharsets.UTF_8)
                .lines()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line.split("\\s+", 3))
                .toList();
        assertFalse(silent.isEmpty());
        for (String[] entry : silent) {
            assertTrue(names.stream().anyMatch(name -> names(entry[1], name)), entry[1] + " is not aboard");
            assertEquals(
                    List.of(),
                    said.stream()
                            .filter(finding -> finding.code().equals(entry[0]))
                            .filter(finding -> finding.objects().stream().anyMatch(o -> names(o, entry[1])))
                            .map(Finding::title)
                            .toList(),
                    entry[0] + " of " + entry[1] + ", but: " + entry[2]);
        }
    }

    @ParameterizedTest
    @CsvSource({"linewarden-review, P06 P10 T07 S12 A08 S07", "starter, T06"})
    void hasItsMistakesAndNoOther(String sample, String codes) {
        Set<String> known = Catalogue.all().stream()
                .map(check -> check.getClass().getAnnotation(CheckInfo.class).code())
                .collect(Collectors.toSet());
        List<String> wanted =
                Stream.of(codes.split(" ")).filter(known::contains).sorted().toList();
        List<String> headlines = Review.of(Samples.read(sample)).headlines().stream()
                .map(Headline::finding)
                .filter(finding -> finding.severity().atLeast(Severity.S3))
                .map(Finding::code)
                .sorted()
                .toList();
        assertFalse(wanted.isEmpty());
        assertEquals(wanted, headlines);
    }

    /** Whether an object of a finding is a thing or a plug, pin or port of it. */
    private static boolean names(String object, String thing) {
        return object.equals(thing) || object.startsWith(thing + "-") || object.startsWith(thing + ":");
    }

    private static Stream<Finding> findings(Report report) {
        return report.headlines().stream()
                .flatMap(headline -> Stream.concat(Stream.of(headline.finding()), headline.alsoExplains().stream()));
    }
}
