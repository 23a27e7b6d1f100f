package ringout.solve.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Fields held against the trade handbook's vectors, against exact formulas and against a sum over small pieces. */
class CurrentRingTest {
    private static final Spot HERE = new Spot(0, 0, 0);

    @Test
    void aLongWire() {
        assertEquals(20, LongPair.wire(10, 100), 1e-12);
        // half a circle away from both ends, one piece of 200 m comes to the same: B = 0.2 I/r to (r/L)^2
        Field piece = CurrentRing.piece(new Spot(-1e5, 0, -100), new Spot(1e5, 0, -100), 10, HERE);
        assertEquals(20, piece.amount(), 1e-4);
    }

    /** The vectors of the trade handbook: 35 A, 130 A, mast, pair laid close, both. */
    @ParameterizedTest
    @CsvSource({"35, 18, 160, 4.9", "130, 18, 160, 18.3", "130, 18, 300, 5.2", "130, 6, 160, 6.1", "130, 6, 300, 1.7"})
    void aLongPair(double amps, double spacing, double distance, double wanted) {
        assertEquals(wanted, LongPair.pair(amps, spacing, distance), 0.05);
    }

    @Test
    void aFlatPairWithItsEnds() {
        Field closed = CurrentRing.pair(250, 18, 160, 130, false).at(HERE);
        assertEquals(18.19, closed.amount(), 0.005);
        assertEquals(0, closed.horizontal(), 1e-12);
        // the two long pieces alone are far off
        Field open = CurrentRing.piece(new Spot(-125, -9, -160), new Spot(125, -9, -160), 130, HERE)
                .plus(CurrentRing.piece(new Spot(125, 9, -160), new Spot(-125, 9, -160), 130, HERE));
        assertEquals(11.21, open.amount(), 0.005);
    }

    @Test
    void aPairOnEdgeWithItsEnds() {
        Field closed = CurrentRing.pair(250, 18, 160, 130, true).at(HERE);
        assertEquals(11.3, closed.horizontal(), 0.05);
        assertEquals(34, HeadingError.degrees(closed.horizontal(), 20), 0.5);
        Field open = CurrentRing.piece(new Spot(-125, 0, -169), new Spot(125, 0, -169), 130, HERE)
                .plus(CurrentRing.piece(new Spot(125, 0, -151), new Spot(-125, 0, -151), 130, HERE));
        assertEquals(18.3, open.horizontal(), 0.05);
    }

    /** On the axis of a circle of area A, far off: 0.2 I A/r^3; exactly mu0 I R^2/2(R^2+r^2)^1.5. */
    @Test
    void aSmallCircle() {
        int pieces = 720;
        List<Spot> corners = new ArrayList<>();
        for (int i = 0; i < pieces; i++) {
            double angle = 2 * Math.PI * i / pieces;
            corners.add(new Spot(10 * Math.cos(angle), 10 * Math.sin(angle), -200));
        }
        double exact = 4 * Math.PI * 0.1 * 30 * 0.01 * 0.01 / (2 * Math.pow((0.01 * 0.01) + (0.2 * 0.2), 1.5));
        double far = 0.2 * 30 * Math.PI * 0.01 * 0.01 / Math.pow(0.2, 3);
        double ring = new CurrentRing(corners, 30).at(HERE).amount();
        assertEquals(exact, ring, exact * 1e-4);
        assertEquals(far, ring, far * 0.01);
    }

    /** A slanted piece against the integral taken in ten thousand steps. */
    @Test
    void aPieceAnywhere() {
        Spot from = new Spot(30, -80, 20);
        Spot to = new Spot(-110, 45, -60);
        Spot place = new Spot(15, 60, 90);
        int steps = 10_000;
        double x = 0;
        double y = 0;
        double z = 0;
        for (int i = 0; i < steps; i++) {
            double t = (i + 0.5) / steps;
            double rx = place.xMm() - (from.xMm() + (t * (to.xMm() - from.xMm())));
            double ry = place.yMm() - (from.yMm() + (t * (to.yMm() - from.yMm())));
            double rz = place.zMm() - (from.zMm() + (t * (to.zMm() - from.zMm())));
            double cube = Math.pow((rx * rx) + (ry * ry) + (rz * rz), 1.5);
            double dx = (to.xMm() - from.xMm()) / steps;
            double dy = (to.yMm() - from.yMm()) / steps;
            double dz = (to.zMm() - from.zMm()) / steps;
            x += 100 * 40 * ((dy * rz) - (dz * ry)) / cube;
            y += 100 * 40 * ((dz * rx) - (dx * rz)) / cube;
            z += 100 * 40 * ((dx * ry) - (dy * rx)) / cube;
        }
        Field piece = CurrentRing.piece(from, to, 40, place);
        assertEquals(x, piece.xUt(), 1e-6);
        assertEquals(y, piece.yUt(), 1e-6);
        assertEquals(z, piece.zUt(), 1e-6);
    }

    @Test
    void whatHasNoArea() {
        // out and back on one line, and a compass on the line of a piece
        assertEquals(
                0,
                new CurrentRing(List.of(new Spot(-50, 0, -90), new Spot(70, 10, -90)), 100)
                        .at(HERE)
                        .amount(),
                1e-12);
        assertEquals(
                0,
                CurrentRing.piece(new Spot(10, 0, 0), new Spot(60, 0, 0), 100, HERE)
                        .amount(),
                0);
        assertThrows(IllegalArgumentException.class, () -> new CurrentRing(List.of(HERE), 1));
    }

    /** The vectors of the trade handbook at 20 microtesla. */
    @ParameterizedTest
    @CsvSource({"1, 2.9", "3, 8.6", "7, 20.5", "10, 30", "18.28, 66", "20, 180", "25, 180"})
    void headingErrors(double level, double wanted) {
        assertEquals(wanted, HeadingError.degrees(level, 20), 0.1);
    }

    @Test
    void aCompassInTheWireIsLost() {
        double level = new CurrentRing(List.of(new Spot(-50, 0, 1e-9), new Spot(50, 0, 1e-9), new Spot(0, 0, -80)), 10)
                .at(HERE)
                .horizontal();
        assertTrue(level > 1e6);
    }
}
