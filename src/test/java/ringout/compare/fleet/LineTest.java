package ringout.compare.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The straight line of least squares against exact mathematics. */
class LineTest {
    @Test
    void readingsOnALineGiveItWithoutScatter() {
        Line line = Line.of(List.of(new Trend.Point(0, 10), new Trend.Point(5, 20), new Trend.Point(20, 50)));
        assertEquals(2, line.slope(), 1e-12);
        assertEquals(10, line.start(), 1e-12);
        assertEquals(0, line.scatter().orElseThrow(), 1e-12);
        assertEquals(45, line.reaches(100).orElseThrow(), 1e-12);
        assertEquals(0, line.error(45).orElseThrow(), 1e-12);
    }

    /** By hand: hours 1 2 3, values 1 3 2: slope 1/2, start 1, residuals -1/2 1 -1/2, squares 3/2 over one degree of freedom. */
    @Test
    void theScatterIsThatOfTheResiduals() {
        Line line = Line.of(List.of(new Trend.Point(1, 1), new Trend.Point(2, 3), new Trend.Point(3, 2)));
        assertEquals(0.5, line.slope(), 1e-12);
        assertEquals(1, line.start(), 1e-12);
        assertEquals(Math.sqrt(1.5), line.scatter().orElseThrow(), 1e-12);
        // reaches 4 at 6 h: sqrt(3/2) / (1/2) * sqrt(1/3 + 16/2)
        assertEquals(Math.sqrt(1.5) * 2 * Math.sqrt(1.0 / 3 + 8), line.error(6).orElseThrow(), 1e-12);
    }

    @Test
    void twoReadingsTellALineAndNothingOfItsScatter() {
        Line line = Line.of(List.of(new Trend.Point(0, 1), new Trend.Point(10, 2)));
        assertEquals(0.1, line.slope(), 1e-12);
        assertTrue(line.scatter().isEmpty());
        assertTrue(line.error(5).isEmpty());
    }

    /** The standard error covers the true crossing as often as it should: two of it in about 95 of 100. */
    @Test
    void theErrorOfTheCrossingIsAsLargeAsItSays() {
        Random random = new Random(7);
        int within = 0;
        int runs = 4000;
        for (int run = 0; run < runs; run++) {
            List<Trend.Point> points = new ArrayList<>();
            for (int i = 0; i < 30; i++) {
                points.add(new Trend.Point(i, 50 + 2 * i + 4 * random.nextGaussian()));
            }
            Line line = Line.of(points);
            double at = line.reaches(130).orElseThrow();
            within += Math.abs(at - 40) < 2 * line.error(at).orElseThrow() ? 1 : 0;
        }
        assertEquals(0.945, (double) within / runs, 0.015);
    }
}
