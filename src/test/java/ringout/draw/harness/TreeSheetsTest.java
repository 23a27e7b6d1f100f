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

    @Test
    void bothSamplesFitOnA3() {
        for (String sample : List.of("linewarden", "dewmaker")) {
            String svg = power(sample);
            assertTrue(svg.contains("width=\"420mm\""), svg.substring(0, 300));
            assertEquals(svg, power(sample));
        }
    }
}
