package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ringout.draw.harness.Sheets.sample;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import ringout.draw.SvgPage;
import ringout.graph.Directory;
import ringout.model.Unit;

/** The plan of places of the samples, judged from the finished SVG. */
class SiteSheetTest {
    private static SvgPage page(String sample) {
        Sheets.Reviewed one = sample(sample);
        return Sheets.page(SurveySheets.place(one.circuit(), one.report(), "0badcafe")
                .orElseThrow()
                .numbered(1, 1));
    }

    private static Map<String, double[]> places(SvgPage page, String view) {
        return page.with("place").stream()
                .filter(place -> place.getAttribute("data-view").equals(view))
                .collect(Collectors.toMap(place -> place.getAttribute("data-place"), SiteSheetTest::middle));
    }

    /** The middle of a sign: of its ellipse, else of its corners. */
    private static double[] middle(Element place) {
        List<Element> round = SvgPage.below(place, "ellipse");
        if (!round.isEmpty()) {
            return new double[] {SvgPage.number(round.get(0), "cx"), SvgPage.number(round.get(0), "cy")};
        }
        return new double[] {Double.NaN, Double.NaN};
    }

    /** Distances on the sheet are those of the list over the scale; forward is up, right is right, up is left in the side view. */
    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void everyUnitStandsWhereItsCoordinatesSay(String sample) {
        SvgPage page = page(sample);
        String head = page.texts().stream()
                .filter(text -> text.startsWith("from above, 1 : "))
                .findFirst()
                .orElseThrow();
        double scale = Double.parseDouble(head.substring(head.lastIndexOf(' ')));
        Map<String, double[]> top = places(page, "top");
        Map<String, double[]> side = places(page, "side");
        Directory directory = sample(sample).circuit().wiring().directory();
        double[] topHub = top.get("PDB");
        double[] sideHub = side.get("PDB");
        Unit hub = directory.unit(directory.find("PDB").orElseThrow());
        int seen = 0;
        for (Unit unit : sample(sample).circuit().wiring().aircraft().units()) {
            double[] at = top.get(unit.ref());
            double[] beside = side.get(unit.ref());
            assertTrue(at != null && beside != null, unit.ref());
            if (!Double.isNaN(at[0])) {
                double forward = (unit.xMm().or(0.0) - hub.xMm().or(0.0)) / scale;
                double right = (unit.yMm().or(0.0) - hub.yMm().or(0.0)) / scale;
                double up = (unit.zMm().or(0.0) - hub.zMm().or(0.0)) / scale;
                assertEquals(topHub[1] - forward, at[1], 0.02, unit.ref());
                assertEquals(topHub[0] + right, at[0], 0.02, unit.ref());
                assertEquals(sideHub[1] - forward, beside[1], 0.02, unit.ref());
                assertEquals(sideHub[0] - up, beside[0], 0.02, unit.ref());
                seen++;
            }
        }
        assertTrue(seen > 20, seen + " units");
    }

    @Test
    void ringsAreAsLargeAsTheFieldSays() {
        SvgPage page = page("linewarden");
        List<String> words = page.texts();
        // 1.2 uT at 300 mm as a closed loop of 130 A, 6 mm apart, 250 mm long, worked out by hand for the sample
        assertTrue(words.stream().anyMatch(text -> text.contains("300 mm away: 1.2 uT")), words.toString());
        Element ring = page.with("ring").get(0);
        double far = Double.parseDouble(ring.getAttribute("data-ring").replaceAll(".* at ([0-9]+) mm.*", "$1"));
        String head = words.stream()
                .filter(text -> text.startsWith("from above, 1 : "))
                .findFirst()
                .orElseThrow();
        double scale = Double.parseDouble(head.substring(head.lastIndexOf(' ')));
        Element drawn = SvgPage.below(ring, "ellipse").get(0);
        assertEquals(far / scale, SvgPage.number(drawn, "rx"), 0.1);
        // a long pair makes 0.2 x 130 x 0.006 / d^2: 3 uT at 228 mm; its ends take a part of it away
        assertTrue(far > 150 && far < 228, far + " mm");
    }

    @Test
    void flagsAndBundlesAreNamed() {
        List<String> words = page("linewarden").texts();
        assertTrue(words.contains("hole top plate: W65 W66"), words.toString());
        assertTrue(words.contains("hinge: W79"), words.toString());
        assertTrue(page("dewmaker").texts().contains("bundle mast: W54 W56"));
    }

    /** What has no coordinates is told by zone, and nothing is drawn where it is not. */
    @Test
    void whatHasNoPlaceIsTold() {
        SvgPage page = page("starter");
        List<String> units = new ArrayList<>();
        sample("starter").circuit().wiring().aircraft().units().forEach(unit -> units.add(unit.ref()));
        String words = String.join(" ", page.texts());
        for (String unit : units) {
            boolean drawn = page.with("place").stream()
                    .anyMatch(place -> place.getAttribute("data-place").equals(unit));
            assertTrue(drawn || words.matches(".*no coordinates, .*\\b" + unit + "\\b.*"), unit);
        }
        assertTrue(words.contains("no coordinates, "), words);
    }
}
