package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.draw.tree.TreeDrawing;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.PinRole;
import ringout.present.svg.SvgOutcome;
import ringout.read.AircraftReader;

/** The trees of the samples, judged from the finished SVG. */
class TreeSheetsTest {
    private static List<Circuit> circuits(String sample) {
        return Circuit.all(
                Wiring.of(AircraftReader.read(Path.of("samples/" + sample)).aircraft()));
    }

    private static String power(String sample) {
        List<Circuit> circuits = circuits(sample);
        Report report = Review.of(circuits, Catalogue.all(), Review.NO_DAY);
        return verified(TreeSheets.power(circuits.get(0), report, "0badcafe").orElseThrow());
    }

    private static String verified(TreeDrawing.Fits fits) {
        SvgOutcome outcome = SvgOutcome.of(fits.numbered(1, 1).sheet());
        assertTrue(outcome instanceof SvgOutcome.Verified, outcome.toString());
        return ((SvgOutcome.Verified) outcome).text();
    }

    private static List<String> data(String svg, String name) {
        Matcher matcher = Pattern.compile(" data-" + name + "=\"([^\"]*)\"").matcher(svg);
        List<String> found = new ArrayList<>();
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        Collections.sort(found);
        return found;
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "starter", "linewarden-review"})
    void everyLoadAndEverySourceIsThereOnce(String sample) {
        Circuit circuit = circuits(sample).get(0);
        PowerGraph power = PowerGraph.of(circuit);
        String svg = power(sample);
        List<String> loads = new ArrayList<>();
        power.loads().forEach(load -> {
            String unit = circuit.wiring().directory().name(load.unit());
            boolean several = power.loads().stream()
                    .anyMatch(other ->
                            other.unit() == load.unit() && !other.rail().equals(load.rail()));
            loads.add(several ? unit + " " + load.rail() : unit);
        });
        Collections.sort(loads);
        assertEquals(loads, data(svg, "load"));
        List<String> packs = new ArrayList<>();
        List<String> regulators = new ArrayList<>();
        for (PowerSource source : power.sources()) {
            if (power.works(source)) {
                (source.kind() == PowerSource.Kind.PACK ? packs : regulators).add(source.name());
            }
        }
        Collections.sort(packs);
        Collections.sort(regulators);
        assertEquals(packs, data(svg, "pack"));
        assertEquals(regulators, data(svg, "regulator"));
    }

    /** Figures of the tables of the samples, worked out by hand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "linewarden | pack | BAT1 | 39 / 172 A",
                "linewarden | board | PDB | 43.59 V",
                "linewarden | regulator | PMON 5.3 | 1.57 / 3.37 A, of 5 / 6 A, left 69 / 44 %",
                "linewarden | regulator | RG12 12 | 4.8 / 9 A, of 8 / 10 A, left 40 / 10 %",
                "linewarden | regulator | RG6 6 | 0.65 / 4.45 A, of 8 / 10 A, left 92 / 55 %",
                "linewarden | load | ESC1 | 6.21 / 28",
                "dewmaker | board | PDB | 50.62 V, 131 / 502 A",
                "dewmaker | regulator | RG12 12 | 19.6 / 34.2 A, of 30 / 40 A, left 35 / 14 %",
                "dewmaker | board | FC 5 | 1.8 / 3.6 A",
                "dewmaker | board | FC 5 aux | 0.4 / 1.2 A"
            })
    void boxesSayWhatFlows(String sample, String kind, String name, String words) {
        Matcher matcher = Pattern.compile(
                        "data-" + kind + "=\"" + name + "\"[^>]*>\\s*<title>[^<]*</title>\\s*<desc>([^<]*)</desc>")
                .matcher(power(sample));
        assertTrue(matcher.find(), kind + " " + name);
        assertTrue(matcher.group(1).contains(words), matcher.group(1));
    }

    private static String returns(String sample) {
        List<Circuit> circuits = circuits(sample);
        Report report = Review.of(circuits, Catalogue.all(), Review.NO_DAY);
        return verified(TreeSheets.returns(circuits.get(0), report, "0badcafe").orElseThrow());
    }

    /** Every unit with a 0V pin stands once on the return diagram. */
    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "starter", "linewarden-review"})
    void everyUnitWithZeroIsThereOnce(String sample) {
        Circuit circuit = circuits(sample).get(0);
        Wiring wiring = circuit.wiring();
        List<String> shown = new ArrayList<>();
        String svg = returns(sample);
        shown.addAll(data(svg, "return"));
        shown.addAll(data(svg, "minus"));
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            if (wiring.is(pin, PinRole.ZERO_V)) {
                String unit = wiring.directory().name(wiring.unitOf(pin));
                boolean told = svg.contains("the 0V of " + unit + " reaches no pack minus");
                assertEquals(told ? 0 : 1, Collections.frequency(shown, unit), unit);
            }
        }
        assertEquals(shown.size(), shown.stream().distinct().count());
    }

    /** 12 AWG silicone in moving air carries 41 x 1.4 = 57.4 A; the signal lead of the motor without one 2.2 A. */
    @Test
    void returnsSayWhatTheyCarry() {
        String clean = returns("linewarden");
        assertTrue(clean.contains("<title>W21 12 AWG, 6.04 of 57.4 A</title>"), "W21");
        assertTrue(clean.contains("8 AWG, 39 of 102 A") || clean.contains(">39 of 102 A<"), "W01");
        String faulty = returns("linewarden-review");
        assertTrue(faulty.contains("<title>W33 26 AWG, 6.31 of 2.2 A</title>"), "W33");
        assertTrue(
                Pattern.compile("data-severity=\"S1\"[^>]*data-target=\"W33\"")
                        .matcher(faulty)
                        .find(),
                "the thin return is marked");
        // A line is as thick as what it carries: over 50 A 2.4 mm, up to 5 A 0.35 mm.
        assertEquals("2.4", width(faulty, "W21"));
        assertEquals("0.35", width(faulty, "W33"));
    }

    private static String width(String svg, String wire) {
        Matcher matcher = Pattern.compile(
                        "data-wire=\"" + wire + "\" data-kind=\"return\".*?class=\"line\".*?stroke-width=\"([0-9.]+)\"",
                        Pattern.DOTALL)
                .matcher(svg);
        assertTrue(matcher.find(), wire);
        return matcher.group(1);
    }

    @Test
    void bothSamplesFitOnA3() {
        for (String sample : List.of("linewarden", "dewmaker")) {
            String power = power(sample);
            assertTrue(power.contains("width=\"420mm\""), power.substring(0, 300));
            assertEquals(power, power(sample));
            String returns = returns(sample);
            assertTrue(returns.contains("width=\"420mm\""), returns.substring(0, 300));
            assertEquals(returns, returns(sample));
        }
    }
}
