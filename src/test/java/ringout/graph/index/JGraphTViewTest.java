package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.junit.jupiter.api.Test;

class JGraphTViewTest {

    @Property
    void looksLikeTheLibrarysOwnGraph(@ForAll("graphs") IndexGraph g) {
        Graph<Integer, Integer> reference = SmallGraphs.reference(g);
        Graph<Integer, Integer> view = JGraphTView.of(g);
        assertEquals(reference.vertexSet(), view.vertexSet());
        assertEquals(reference.edgeSet(), view.edgeSet());
        assertEquals(reference.getType().isDirected(), view.getType().isDirected());
        for (int e = 0; e < g.edgeBound(); e++) {
            assertEquals(reference.containsEdge(e), view.containsEdge(e));
            assertEquals(reference.containsEdge(e), view.edgeSet().contains(e));
        }
        for (Integer e : reference.edgeSet()) {
            assertEquals(reference.getEdgeSource(e), view.getEdgeSource(e));
            assertEquals(reference.getEdgeTarget(e), view.getEdgeTarget(e));
        }
        for (Integer v : reference.vertexSet()) {
            looksTheSameFrom(v, reference, view);
        }
    }

    private static void looksTheSameFrom(Integer v, Graph<Integer, Integer> reference, Graph<Integer, Integer> view) {
        assertEquals(reference.degreeOf(v), view.degreeOf(v));
        assertEquals(reference.inDegreeOf(v), view.inDegreeOf(v));
        assertEquals(reference.outDegreeOf(v), view.outDegreeOf(v));
        assertSame(reference.edgesOf(v), view.edgesOf(v), reference.edgeSet());
        assertSame(reference.incomingEdgesOf(v), view.incomingEdgesOf(v), reference.edgeSet());
        assertSame(reference.outgoingEdgesOf(v), view.outgoingEdgesOf(v), reference.edgeSet());
        for (Integer w : reference.vertexSet()) {
            assertEquals(reference.getAllEdges(v, w), view.getAllEdges(v, w));
            assertEquals(reference.containsEdge(v, w), view.containsEdge(v, w));
        }
    }

    /** Iteration, size and membership are three pieces of code: each is asked. */
    private static void assertSame(Set<Integer> expected, Set<Integer> actual, Set<Integer> all) {
        assertEquals(expected, new HashSet<>(actual));
        assertEquals(expected.size(), actual.size());
        assertEquals(expected.isEmpty(), actual.isEmpty());
        for (Integer e : all) {
            assertEquals(expected.contains(e), actual.contains(e));
        }
    }

    @Property
    void libraryAlgorithmsRunOnIt(@ForAll("graphs") IndexGraph g) {
        Graph<Integer, Integer> reference = SmallGraphs.reference(g);
        Graph<Integer, Integer> view = JGraphTView.of(g);
        assertEquals(
                new ConnectivityInspector<>(reference).connectedSets(),
                new ConnectivityInspector<>(view).connectedSets());
        if (!g.isDirected()) {
            assertEquals(
                    new BiconnectivityInspector<>(reference).getBridges(),
                    new BiconnectivityInspector<>(view).getBridges());
        }
    }

    @Test
    void speaksOfTheThingsThemselvesAndWeighsThem() {
        Graph<String, String> view = JGraphTView.of(
                        SmallGraphs.of(3, 0, 1, 1, 2, 0, 2),
                        Numbering.of(List.of("FC", "GPS", "LOG")),
                        Numbering.of(List.of("W1", "W2", "W3")))
                .weighted(e -> e == 2 ? 5.0 : 1.0);
        assertTrue(view.getType().isWeighted());
        assertEquals(
                List.of("W1", "W2"),
                DijkstraShortestPath.findPathBetween(view, "FC", "LOG").getEdgeList());
        assertEquals("W3", view.getEdge("LOG", "FC"));
        assertFalse(view.containsVertex("IMU"));
        assertNull(view.getAllEdges("FC", "IMU"));
        assertThrows(IllegalArgumentException.class, () -> view.edgesOf("IMU"));
        assertThrows(IllegalArgumentException.class, () -> view.getEdgeSource("W4"));
    }

    @Test
    void cannotBeChanged() {
        Graph<Integer, Integer> view = JGraphTView.of(SmallGraphs.of(2, 0, 1));
        assertFalse(view.getType().isModifiable());
        assertThrows(UnsupportedOperationException.class, view::addVertex);
        assertThrows(UnsupportedOperationException.class, () -> view.addEdge(0, 1));
        assertThrows(UnsupportedOperationException.class, () -> view.removeEdge(0, 1));
        assertThrows(UnsupportedOperationException.class, () -> view.removeVertex(0));
        assertThrows(UnsupportedOperationException.class, () -> view.setEdgeWeight(0, 2.0));
        assertThrows(UnsupportedOperationException.class, () -> view.edgesOf(0).clear());
    }

    @Test
    void numberingRefusesTheSameThingTwice() {
        assertThrows(IllegalArgumentException.class, () -> Numbering.of(List.of("A", "B", "A")));
        assertEquals(-1, Numbering.of(List.of("A")).number("B"));
        assertEquals(-1, Numbering.plain(3).number(3));
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return Arbitraries.oneOf(SmallGraphs.undirected(), SmallGraphs.directed());
    }
}
