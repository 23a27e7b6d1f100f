package ringout.graph.route;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Against plane geometry worked out by hand. */
class WayTest {
    private static final double EXACT = 1e-6;

    private static Way way(double... xyz) {
        Spot[] spots = new Spot[xyz.length / 3];
        for (int i = 0; i < spots.length; i++) {
            spots[i] = new Spot(xyz[3 * i], xyz[3 * i + 1], xyz[3 * i + 2]);
        }
        return new Way(List.copyOf(Arrays.asList(spots)));
    }

    @Test
    void lengthAddsThePieces() {
        assertEquals(0, way(1, 2, 3).lengthMm());
        assertEquals(3 + 4 + 12, way(0, 0, 0, 3, 0, 0, 3, 4, 0, 3, 4, 12).lengthMm(), EXACT);
        assertEquals(13, way(0, 0, 0, 3, 4, 12).lengthMm(), EXACT);
    }

    @Test
    void parallelPiecesAreBesideEachOtherWhereTheyOverlap() {
        Way one = way(0, 0, 0, 300, 0, 0);
        Way other = way(100, 15, 0, 500, 15, 0);
        // from where the distance to (100, 15) is 20: 100 - sqrt(400 - 225)
        double overhang = Math.sqrt(20 * 20 - 15 * 15);
        assertEquals(200 + overhang, one.besideMm(other, 20), EXACT);
        assertEquals(0, one.besideMm(other, 14.9), EXACT);
    }

    @Test
    void crossingPiecesAreNearForALengthThatGoesWithTheSineOfTheirAngle() {
        Way one = way(-500, 0, 0, 500, 0, 0);
        assertEquals(40, one.besideMm(way(0, -500, 0, 0, 500, 0), 20), EXACT);
        double thirty = Math.toRadians(30);
        Way slanting = way(-400 * Math.cos(thirty), -200, 0, 400 * Math.cos(thirty), 200, 0);
        assertEquals(2 * 20 / Math.sin(thirty), one.besideMm(slanting, 20), EXACT);
    }

    @Test
    void whatIsNearSeveralPiecesCountsOnce() {
        Way one = way(0, 0, 0, 100, 0, 0);
        Way there = way(0, 5, 0, 100, 5, 0, 100, -5, 0, 0, -5, 0);
        assertEquals(100, one.besideMm(there, 10), EXACT);
    }

    @Test
    void aPieceWithoutLengthIsAPoint() {
        Way one = way(0, 0, 0, 100, 0, 0);
        assertEquals(20, one.besideMm(way(50, 0, 0, 50, 0, 0), 10), EXACT);
        assertEquals(0, way(50, 0, 0, 50, 0, 0).besideMm(one, 10), EXACT);
    }

    @Test
    void boxesAreNearWhenTheyAreOnEveryAxis() {
        Box one = way(0, 0, 0, 100, 0, 0).box();
        assertTrue(one.near(way(50, 20, 0, 50, 500, 0).box(), 20));
        assertFalse(one.near(way(50, 20.1, 0, 50, 500, 0).box(), 20));
        assertFalse(one.near(way(50, 0, -30, 50, 0, -21).box(), 20));
        assertFalse(one.near(way().box(), 1000));
    }
}
