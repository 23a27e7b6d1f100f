package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ringout.draw.harness.Sheets.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import ringout.draw.SvgPage;
import ringout.draw.style.Drawn;
import ringout.graph.Wiring;

/** The block diagram of the samples, judged from the finished SVG. */
class BlockSheetTest {
    private static Drawn drawn(String sample) {
        return SurveySheets.block(sample(sample).circuit(), sample(sample).report(), "0badcafe")
                .orElseThrow();
    }

    private static SvgPage page(String sample) {
        return Sheets.page(drawn(sample).numbered(1, 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "linewarden-review", "starter"})
    void everyUnitOnceAndEveryLeadFromUnitToUnit(String sample) {
        Wiring wiring = sample(sample).circuit().wiring();
        SvgPage page = page(sample);
        Map<String, Element> units = page.by("unit");
        assertEquals(wiring.directory().count(), units.size());
        List<String> leads = new ArrayList<>();
        for (Element wire : page.with("kind")) {
            leads.add(wire.getAttribute("data-wire"));
        }
        assertEquals(
                new TreeSet<>(wiring.aircraft().leads().stream()
                        .map(lead -> lead.id())
                        .toList()),
                new TreeSet<>(leads));
        assertEquals(wiring.aircraft().leads().size(), leads.size());
        wiring.wires().forEach(wire -> {
            Element line = page.with("kind").stream()
                    .filter(one ->
                            one.getAttribute("data-wire").equals(wire.lead().id()))
                    .findFirst()
                    .orElseThrow();
            String from = wiring.directory().name(wiring.unitOf(wire.fromPin()));
            String to = wiring.directory().name(wiring.unitOf(wire.toPin()));
            String[] points = SvgPage.below(line, "polyline")
                    .get(0)
                    .getAttribute("points")
                    .split(" ");
            assertTrue(touches(units.get(from), points[0]), wire.lead().id() + " at " + from);
            assertTrue(
                    touches(units.get(to), points[points.length - 1]),
                    wire.lead().id() + " at " + to);
        });
    }

    /** Whether a point lies on the edge of the box of a unit. */
    private static boolean touches(Element unit, String point) {
        Element body = SvgPage.below(unit, "rect").get(0);
        double x = Double.parseDouble(point.split(",")[0]) - SvgPage.number(body, "x");
        double y = Double.parseDouble(point.split(",")[1]) - SvgPage.number(body, "y");
        double tall = SvgPage.number(body, "height");
        boolean onEdge = Math.abs(y) < 0.05 || Math.abs(y - tall) < 0.05;
        return onEdge && x > 0 && x < SvgPage.number(body, "width");
    }

    /** By the tables of the samples. */
    @ParameterizedTest
    @CsvSource({
        "linewarden, W66, bus pair",
        "linewarden, W11, supply",
        "linewarden, W21, 0V return",
        "linewarden, W31, PWM pulse",
        "linewarden, W51, motor phase",
        "linewarden, W85, I2C",
        "dewmaker, W41, bus pair"
    })
    void lineTellsWhatItCarries(String sample, String lead, String kind) {
        Element line = page(sample).with("kind").stream()
                .filter(one -> one.getAttribute("data-wire").equals(lead))
                .findFirst()
                .orElseThrow();
        assertEquals(kind, line.getAttribute("data-kind"));
    }

    /** The packs stand at the foot, the board above them, what it feeds above that. */
    @Test
    void powerRunsUpwards() {
        Map<String, Element> units = page("linewarden").by("unit");
        List<String> way = List.of("BAT1", "PDB", "ESC1");
        for (int i = 1; i < way.size(); i++) {
            assertTrue(top(units.get(way.get(i))) < top(units.get(way.get(i - 1))), way.get(i));
        }
    }

    private static double top(Element unit) {
        return SvgPage.number(SvgPage.below(unit, "rect").get(0), "y");
    }

    @Test
    void linewardenStandsOnOneA3AndSameInputGivesSameBytes() {
        String text = Sheets.verified(drawn("linewarden").numbered(1, 1));
        assertTrue(text.contains("width=\"420mm\""));
        assertEquals(text, Sheets.verified(drawn("linewarden").numbered(1, 1)));
    }
}
