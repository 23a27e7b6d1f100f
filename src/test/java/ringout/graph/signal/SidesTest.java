package ringout.graph.signal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What words say of a side; x forward, y right, z up from the hub, as units are placed. */
class SidesTest {
    @Test
    void readsSidesAmongOtherWords() {
        assertEquals(new Sides(1, -1, 0), Sides.of("nozzle Front-Left"));
        assertEquals(new Sides(-1, 1, 1), Sides.of("upper aft right"));
        assertFalse(Sides.of("M3").said());
        assertFalse(Sides.of("brightness of the lefthand leg").said());
    }

    @Test
    void contradictsOnlyOnAnAxisBothSpeakOf() {
        assertTrue(Sides.of("left").contradicts(Sides.of("front right")));
        assertFalse(Sides.of("left").contradicts(Sides.of("front")));
        assertFalse(Sides.of("front left").contradicts(Sides.of("left")));
    }
}
