package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.Graph;
import org.junit.jupiter.api.Test;

class IndexGraphTest {

    @Test
    void rowsAscendByEdgeAndNameTheOtherEnd() {
        IndexGraph g = SmallGraphs.of(3, 0, 1, 2, 0, 0, 1, 1, 1);
        assertEquals(List.of("0>1", "1>2", "2>1"), row(g, 0));
        assertEquals(List.of("0>0", "2>0", "3>1"), row(g, 1), "a self-loop has one slot");
        assertEquals(List.of("1>0"), row(g, 2));
    }

    @Test
    void directedRowsHoldWhatLeaves() {
        IndexGraph g = SmallGraphs.directedOf(2, 0, 1, 1, 0, 0, 0);
        assertEquals(List.of("0>1", "2>0"), row(g, 0));
        assertEquals(
                List.of("1>1", "2>0"), row(g.reversed(), 0).stream().sorted().toList());
    }

    @Test
    void viewHidesWithoutRenumbering() {
        IndexGraph g = SmallGraphs.of(3, 0, 1, 1, 2, 0, 1, 2, 0);
        IndexGraph odd = g.onlyEdges(e -> e % 2 == 1);
        assertEquals(2, odd.edgeCount());
        assertEquals(4, odd.edgeBound());
        assertFalse(odd.hasEdge(0));
        assertTrue(odd.hasEdge(3));
        assertFalse(odd.hasEdge(4));
        assertFalse(g.hasEdge(4));
        assertFalse(g.hasEdge(-1));
        assertEquals(List.of("3>2"), row(odd, 0));
        assertEquals(List.of("1>2"), row(odd, 1));
        assertEquals(4, g.edgeCount(), "the origin is untouched");
        BitSet third = new BitSet();
        third.set(3);
        assertEquals(1, odd.withoutEdges(third).edgeCount(), "views nest");
        assertEquals(1, odd.onlyEdges(third).edgeCount());
    }

    @Test
    void masksPastTheFirstWord() {
        IndexGraph g = SmallGraphs.path(200).onlyEdges(e -> e == 63 || e == 64 || e == 198);
        assertEquals(3, g.edgeCount());
        assertEquals(List.of("63>63", "64>65"), row(g, 64));
        assertEquals(List.of(), row(g, 0));
    }

    @Test
    void aHubMakesOneSourceOfSeveral() {
        IndexGraph g = SmallGraphs.path(3).onlyEdges(e -> e == 1).withHub(0, 2);
        assertEquals(List.of("2>0", "3>2"), row(g, 3));
        assertFalse(g.hasEdge(0), "what was hidden stays hidden");
        assertEquals("undirected graph, 4 vertices, 3 edges", g.toString());
    }

    @Test
    void refusesWhatIsNoGraph() {
        int[] two = {0, 1};
        assertThrows(IllegalArgumentException.class, () -> IndexGraph.undirected(2, two, new int[] {0}));
        assertThrows(IllegalArgumentException.class, () -> IndexGraph.undirected(-1, new int[0], new int[0]));
        IllegalArgumentException outside =
                assertThrows(IllegalArgumentException.class, () -> IndexGraph.directed(2, two, new int[] {1, 2}));
        assertEquals("edge 1 joins 1 and 2 in a graph of 2", outside.getMessage());
    }

    @Test
    void copiesTheCallersArrays() {
        int[] from = {0};
        IndexGraph g = IndexGraph.undirected(2, from, new int[] {1});
        from[0] = 1;
        assertEquals(0, g.from(0));
    }

    @Test
    void emptyGraph() {
        IndexGraph g = IndexGraph.undirected(0, new int[0], new int[0]);
        assertEquals(0, g.vertexCount());
        assertEquals(0, Components.of(g).count());
    }

    @Property
    void everyRowIsTheReferenceLibrarysEdgesOf(@ForAll("undirected") IndexGraph g) {
        Graph<Integer, Integer> reference = SmallGraphs.reference(g);
        assertEquals(reference.edgeSet().size(), g.edgeCount());
        for (int v = 0; v < g.vertexCount(); v++) {
            assertEquals(reference.edgesOf(v), edges(g, v));
            assertEquals(reference.degreeOf(v), g.degree(v));
        }
    }

    @Property
    void directedRowsAreOutgoingAndReversedRowsIncoming(@ForAll("directed") IndexGraph g) {
        Graph<Integer, Integer> reference = SmallGraphs.reference(g);
        IndexGraph back = g.reversed();
        for (int v = 0; v < g.vertexCount(); v++) {
            assertEquals(reference.outgoingEdgesOf(v), edges(g, v));
            assertEquals(reference.incomingEdgesOf(v), edges(back, v));
            assertEquals(reference.outDegreeOf(v), g.degree(v));
            assertEquals(reference.edgesOf(v), edges(g.withoutDirection(), v));
        }
    }

    private static List<String> row(IndexGraph g, int v) {
        List<String> row = new ArrayList<>();
        for (int end = g.endSlot(v), s = g.firstSlot(v); s < end; s = g.nextSlot(s, end)) {
            row.add(g.slotEdge(s) + ">" + g.slotVertex(s));
        }
        return row;
    }

    private static Set<Integer> edges(IndexGraph g, int v) {
        Set<Integer> edges = new HashSet<>();
        for (int end = g.endSlot(v), s = g.firstSlot(v); s < end; s = g.nextSlot(s, end)) {
            assertEquals(g.otherEnd(g.slotEdge(s), v), g.slotVertex(s));
            assertTrue(edges.add(g.slotEdge(s)), "an edge once in a row");
        }
        return edges;
    }

    @Provide
    Arbitrary<IndexGraph> undirected() {
        return SmallGraphs.undirected();
    }

    @Provide
    Arbitrary<IndexGraph> directed() {
        return SmallGraphs.directed();
    }
}
