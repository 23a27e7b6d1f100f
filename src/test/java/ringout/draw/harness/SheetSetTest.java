package ringout.draw.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.draw.paper.Point;
import ringout.draw.paper.SheetSize;
import ringout.draw.paper.ZoneGrid;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.present.svg.SvgOutcome;
import ringout.read.AircraftReader;

/** The set of sheets of an aircraft, judged from the finished SVG. */
class SheetSetTest {
    private static final Pattern NUMBER = Pattern.compile(">(\\d+ of \\d+)<");

    private static final Pattern BADGE =
            Pattern.compile("data-number=\"1\" data-target.*?points=\"([0-9.]+),([0-9.]+)", Pattern.DOTALL);

    private static List<String> sheets() {
        List<Circuit> circuits = Circuit.all(
                Wiring.of(AircraftReader.read(Path.of("samples/starter")).aircraft()));
        Report report = Review.of(circuits, Catalogue.all(), Review.NO_DAY);
        List<String> texts = new ArrayList<>();
        for (SheetSet.Numbered sheet : SheetSet.of(circuits.get(0), report, "0badcafe")) {
            SvgOutcome outcome = SvgOutcome.of(sheet.sheet());
            assertTrue(outcome instanceof SvgOutcome.Verified, outcome.toString());
            texts.add(((SvgOutcome.Verified) outcome).text());
        }
        return texts;
    }

    @Test
    void wiringSheetsAndBusDiagramsAreNumberedThrough() {
        List<String> texts = sheets();
        List<String> numbers = new ArrayList<>();
        List<String> wanted = new ArrayList<>();
        for (String text : texts) {
            Matcher matcher = NUMBER.matcher(text);
            assertTrue(matcher.find(), "no sheet number");
            numbers.add(matcher.group(1));
            wanted.add(numbers.size() + " of " + texts.size());
        }
        assertTrue(texts.size() > 1, "one sheet only");
        assertTrue(texts.get(0).contains("block diagram"), "the block diagram comes first");
        assertEquals(wanted, numbers);
    }

    @Test
    void layingOutSideBySideGivesTheSameBytesEveryTime() {
        assertEquals(sheets(), sheets());
    }

    /** The terminator that is missing at the recorder. */
    @Test
    void findingListNamesTheZoneOfTheBadge() {
        String bus = sheets().stream()
                .filter(sheet -> sheet.contains("bus diagram"))
                .findFirst()
                .orElseThrow();
        Matcher badge = BADGE.matcher(bus);
        assertTrue(badge.find(), "no badge on the bus diagram");
        ZoneGrid grid = new ZoneGrid(SheetSize.A4);
        double x = Double.parseDouble(badge.group(1));
        double y = Double.parseDouble(badge.group(2));
        assertTrue(bus.contains(">at " + grid.zoneOf(new Point(x, y + 2)) + "<"), "zone of " + x + ", " + y);
    }
}
