package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.alg.cycle.QueueBFSFundamentalCycleBasis;
import org.junit.jupiter.api.Test;

class CycleBasisTest {

    @Test
    void aRingIsWrittenOutChordFirst() {
        CycleBasis basis = CycleBasis.of(SmallGraphs.of(4, 0, 1, 1, 2, 2, 3, 3, 0));
        assertEquals(1, basis.dimension());
        assertEquals(2, basis.chord(0), "both ways round meet at the far side");
        assertEquals("2 -[2]- 3 -[3]- 0 -[0]- 1 -[1]- 2", basis.cycle(0).toString());
    }

    @Test
    void parallelWiresAndSelfLoops() {
        CycleBasis basis = CycleBasis.of(SmallGraphs.of(2, 0, 1, 1, 0, 1, 1));
        assertEquals(2, basis.dimension());
        assertEquals("1 -[1]- 0 -[0]- 1", basis.cycle(0).toString());
        assertEquals("1 -[2]- 1", basis.cycle(1).toString());
        assertTrue(basis.cycle(1).isCycle());
    }

    @Test
    void gridHasOneCycleACell() {
        int side = 300;
        IndexGraphBuilder grid = new IndexGraphBuilder(side * side);
        for (int v = 0; v < side * side; v++) {
            if ((v + 1) % side != 0) {
                grid.addEdge(v, v + 1);
            }
            if (v + side < side * side) {
                grid.addEdge(v, v + side);
            }
        }
        assertEquals((side - 1) * (side - 1), CycleBasis.of(grid.undirected()).dimension());
    }

    @Test
    void pathOfAMillionHasNoCycleAndClosedItHasOneOfAMillion() {
        int n = 1_000_000;
        assertEquals(0, CycleBasis.of(SmallGraphs.path(n)).dimension());
        IndexGraphBuilder ring = new IndexGraphBuilder(n);
        for (int v = 0; v < n; v++) {
            ring.addEdge(v, (v + 1) % n);
        }
        assertEquals(n, CycleBasis.of(ring.undirected()).cycle(0).edgeCount());
    }

    @Test
    void refusesADirectedGraph() {
        IndexGraph directed = SmallGraphs.directedOf(2, 0, 1);
        assertThrows(IllegalArgumentException.class, () -> CycleBasis.of(directed));
    }

    @Property
    void dimensionIsEulersNumberAndAgreesWithTheReferenceLibrary(@ForAll("graphs") IndexGraph g) {
        CycleBasis basis = CycleBasis.of(g);
        int euler = g.edgeCount() - g.vertexCount() + Components.of(g).count();
        assertEquals(euler, basis.dimension());
        var reference = new QueueBFSFundamentalCycleBasis<>(SmallGraphs.reference(g)).getCycleBasis();
        assertEquals(reference.getCycles().size(), basis.dimension());
    }

    @Property
    void eachCycleIsSimpleAndHasItsOwnChordOnly(@ForAll("graphs") IndexGraph g) {
        CycleBasis basis = CycleBasis.of(g);
        for (int i = 0; i < basis.dimension(); i++) {
            Walk cycle = basis.cycle(i);
            assertTrue(cycle.isCycle());
            assertEquals(basis.chord(i), cycle.edge(0));
            assertEquals(
                    cycle.edgeCount(), Arrays.stream(cycle.edges()).distinct().count());
            assertEquals(
                    cycle.edgeCount(),
                    Arrays.stream(cycle.vertices()).distinct().count(),
                    "no vertex twice");
            assertEquals(
                    1,
                    Arrays.stream(cycle.edges())
                            .filter(e -> !basis.forest().edges().get(e))
                            .count());
            assertTrue(Arrays.stream(cycle.edges()).allMatch(g::hasEdge));
        }
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return SmallGraphs.undirected();
    }
}
