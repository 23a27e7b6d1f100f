package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class WalkTest {
    private final IndexGraph square = SmallGraphs.of(4, 0, 1, 1, 2, 2, 3, 3, 0);

    @Test
    void followsEdgesEitherWay() {
        Walk walk = Walk.along(square, 2, 1, 0, 3);
        assertArrayEquals(new int[] {2, 1, 0, 3}, walk.vertices());
        assertEquals("3 -[3]- 0 -[0]- 1 -[1]- 2", walk.reversed().toString());
        assertEquals(4.0, walk.sum(e -> e), 0.0);
        assertFalse(walk.isCycle());
        assertFalse(Walk.along(square, 1).isCycle(), "standing still is no cycle");
    }

    @Test
    void refusesAGap() {
        assertThrows(IllegalArgumentException.class, () -> Walk.along(square, 0, 0, 3));
    }

    @Test
    void equalByVerticesAndEdges() {
        assertEquals(Walk.along(square, 0, 0), Walk.along(square, 0, 0));
        assertEquals(
                Walk.along(square, 0, 0).hashCode(), Walk.along(square, 0, 0).hashCode());
        assertNotEquals(Walk.along(square, 0, 0), Walk.along(square, 1, 0));
    }
}
