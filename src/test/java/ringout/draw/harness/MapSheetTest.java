package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static ringout.draw.harness.Sheets.sample;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;
import ringout.draw.SvgPage;
import ringout.model.Rotor;

/** The map of motors of the samples, judged from the finished SVG. */
class MapSheetTest {
    /** The tip of a head is its first corner. */
    private static final Pattern HEAD = Pattern.compile("<polygon points=\"([0-9.]+),([0-9.]+) [^>]*class=\"head\"");

    private static SvgPage page(String sample) {
        Sheets.Reviewed one = sample(sample);
        return Sheets.page(SurveySheets.map(one.circuit(), one.report(), "0badcafe")
                .orElseThrow()
                .numbered(1, 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "linewarden-review"})
    void everyRotorStandsAtItsBearingNoseUp(String sample) {
        SvgPage page = page(sample);
        Map<String, Element> rotors = page.by("rotor");
        List<Rotor> table =
                sample(sample).circuit().wiring().aircraft().airframe().rotors();
        assertEquals(table.size(), rotors.size());
        double hubX =
                rotors.values().stream().mapToDouble(MapSheetTest::x).average().orElseThrow();
        double hubY =
                rotors.values().stream().mapToDouble(MapSheetTest::y).average().orElseThrow();
        for (Rotor rotor : table) {
            Element drawn = rotors.get("M" + rotor.number().or(0));
            double bearing = Math.toDegrees(Math.atan2(x(drawn) - hubX, hubY - y(drawn)));
            assertEquals(rotor.bearingDeg().or(0.0), bearing, 1.5, drawn.getAttribute("data-rotor"));
            assertEquals(rotor.spin().or(null).name(), drawn.getAttribute("data-turn"));
        }
    }

    /** The name stands in the middle of its disc. */
    private static double x(Element rotor) {
        return SvgPage.number(SvgPage.below(rotor, "text").get(0), "x");
    }

    private static double y(Element rotor) {
        return SvgPage.number(SvgPage.below(rotor, "text").get(0), "y");
    }

    /** From the tables of the samples by hand: output, slot, clamp, bus with address, direction by the phases, propeller. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "linewarden | M4 | M4 4 O4 K1 CCW CCW",
                "linewarden | M5 | M5 5 O5 K2 CW CW",
                "linewarden-review | M3 | M3 3 O3 K3P CW CW",
                "linewarden-review | M4 | M4 4 O4 K1 CW, wants CCW CCW",
                "dewmaker | M6 | M6 E6 CAN-B 16 CW CW",
                "dewmaker | M7 | M7 E7 CAN-A 17 CW CW"
            })
    void rowSaysWhatDrivesIt(String sample, String motor, String row) {
        assertEquals(
                row, String.join(" ", SvgPage.texts(page(sample).by("motor").get(motor))));
    }

    @Test
    void conventionAndCautionAreInWords() {
        List<String> words = page("dewmaker").texts();
        assertTrue(
                words.contains("numbers and turning by controller manual, frame table coaxial X8"), words.toString());
        assertTrue(words.contains("seen from above; propellers off before a motor is commanded"), words.toString());
    }

    /** The head of the arrow above the disc lies to the right of the name for clockwise. */
    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void theArrowAloneTellsTheDirection(String sample) {
        SvgPage page = page(sample);
        String svg = Sheets.verified(
                SurveySheets.map(sample(sample).circuit(), sample(sample).report(), "0badcafe")
                        .orElseThrow()
                        .numbered(1, 1));
        assertTrue(svg.contains("width=\"297mm\""), "A4");
        long arrows = page.by("rotor").values().stream()
                .filter(rotor -> arrowPointsRight(svg, x(rotor), y(rotor))
                        == rotor.getAttribute("data-turn").equals("CW"))
                .count();
        assertEquals(page.by("rotor").size(), arrows);
    }

    private static boolean arrowPointsRight(String svg, double x, double y) {
        double best = Double.MAX_VALUE;
        boolean right = false;
        Matcher heads = HEAD.matcher(svg);
        while (heads.find()) {
            double dx = Double.parseDouble(heads.group(1)) - x;
            double far = Math.hypot(dx, Double.parseDouble(heads.group(2)) - y);
            right = far < best ? dx > 0 : right;
            best = Math.min(best, far);
        }
        return right;
    }

    @Test
    void whatHasNoPlaceStandsInTheTableAndIsTold() {
        SvgPage page = page("starter");
        assertEquals(List.of(), page.with("rotor"));
        assertEquals(
                List.of("M1", "1", "M", "CW", "CW"),
                SvgPage.texts(page.by("motor").get("M1")));
        assertTrue(page.texts().contains("note: bearing or distance of M1 not given: it is in the table only"));
    }

    @Test
    void findingsAreMarkedAtTheirMotors() {
        List<Element> badges = page("linewarden-review").with("target");
        List<String> targets = badges.stream()
                .map(badge -> badge.getAttribute("data-severity") + " " + badge.getAttribute("data-target"))
                .toList();
        assertTrue(targets.containsAll(List.of("S1 M3", "S2 M4")), targets.toString());
    }
}
