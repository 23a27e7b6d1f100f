package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.junit.jupiter.api.Test;

class ComponentsTest {

    @Test
    void numberedByLowestVertexMembersAscending() {
        Components c = Components.of(SmallGraphs.of(6, 5, 3, 3, 0, 4, 1));
        assertEquals(3, c.count());
        assertArrayEquals(new int[] {0, 3, 5}, c.members(0));
        assertArrayEquals(new int[] {1, 4}, c.members(1));
        assertArrayEquals(new int[] {2}, c.members(2));
        assertEquals(5, c.member(0, 2));
        assertThrows(IndexOutOfBoundsException.class, () -> c.member(1, 2));
        assertTrue(c.same(0, 5));
        assertFalse(c.same(0, 1));
    }

    @Test
    void hiddenEdgesJoinNothing() {
        IndexGraph g = SmallGraphs.path(5).onlyEdges(e -> e != 2);
        assertArrayEquals(new int[] {3, 4}, Components.of(g).members(1));
    }

    @Test
    void pathAndStarOfAMillion() {
        assertEquals(1_000_000, Components.of(SmallGraphs.path(1_000_000)).size(0));
        assertEquals(1, Components.of(SmallGraphs.star(1_000_000)).count());
    }

    @Property
    void agreesWithTheReferenceLibrary(@ForAll("graphs") IndexGraph g) {
        Components c = Components.of(g);
        Set<Set<Integer>> ours = new HashSet<>();
        for (int i = 0; i < c.count(); i++) {
            Set<Integer> members = new HashSet<>();
            for (int k = 0; k < c.size(i); k++) {
                members.add(c.member(i, k));
                assertEquals(i, c.componentOf(c.member(i, k)));
            }
            ours.add(members);
        }
        assertEquals(new HashSet<>(new ConnectivityInspector<>(SmallGraphs.reference(g)).connectedSets()), ours);
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return net.jqwik.api.Arbitraries.oneOf(SmallGraphs.undirected(), SmallGraphs.directed());
    }
}
