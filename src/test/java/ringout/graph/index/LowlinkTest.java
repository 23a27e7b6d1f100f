package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.BiconnectivityInspector;
import org.junit.jupiter.api.Test;

class LowlinkTest {
    private static final int MILLION = 1_000_000;

    @Test
    void ofTwoParallelWiresNeitherIsABridge() {
        Lowlink pass = Lowlink.of(SmallGraphs.of(3, 0, 1, 0, 1, 1, 2));
        assertEquals(bits(2), pass.bridges());
        assertEquals(bits(1), pass.cutVertices());
        assertEquals(2, pass.blocks().count());
    }

    @Test
    void selfLoopIsABlockOfItsOwn() {
        Lowlink pass = Lowlink.of(SmallGraphs.of(2, 0, 0, 0, 1, 0, 0));
        assertEquals(bits(1), pass.bridges());
        assertTrue(pass.cutVertices().isEmpty());
        assertEquals(3, pass.blocks().count());
        assertEquals(1, pass.blocks().size(pass.blocks().blockOf(2)));
    }

    @Test
    void twoRingsThatShareAVertex() {
        Lowlink pass = Lowlink.of(SmallGraphs.of(5, 0, 1, 1, 2, 2, 0, 2, 3, 3, 4, 4, 2));
        assertTrue(pass.bridges().isEmpty());
        assertEquals(bits(2), pass.cutVertices());
        Blocks blocks = pass.blocks();
        assertArrayEquals(new int[] {0, 1, 2}, blocks.edges(blocks.blockOf(0)));
        assertArrayEquals(new int[] {3, 4, 5}, blocks.edges(blocks.blockOf(5)));
    }

    @Test
    void theExampleOfTheTextbook() {
        // Cormen, Leiserson, Rivest, Stein, Introduction to Algorithms, problem 22-2 by shape: two triangles, joined by
        // one edge, and a pendant vertex on the second.
        Lowlink pass = Lowlink.of(SmallGraphs.of(7, 0, 1, 1, 2, 2, 0, 2, 3, 3, 4, 4, 5, 5, 3, 5, 6));
        assertEquals(bits(3, 7), pass.bridges());
        assertEquals(bits(2, 3, 5), pass.cutVertices());
        assertEquals(4, pass.blocks().count());
    }

    @Test
    void subtreeOfARootedPassIsWhatHangsBelow() {
        Lowlink pass = Lowlink.of(SmallGraphs.of(5, 3, 0, 0, 1, 0, 2, 3, 4), 3);
        assertEquals(0, pass.position(3));
        assertEquals(5, pass.subtreeEnd(3));
        Set<Integer> below = new TreeSet<>();
        for (int i = pass.position(0); i < pass.subtreeEnd(0); i++) {
            below.add(pass.vertexAt(i));
        }
        assertEquals(Set.of(0, 1, 2), below);
        assertTrue(pass.hangsFromParentOnly(0));
        assertFalse(pass.hangsFromParentOnly(3), "a root hangs from nothing");
        assertEquals(-1, pass.parent(3));
    }

    @Test
    void pathOfAMillionIsAllBridges() {
        Lowlink pass = Lowlink.of(SmallGraphs.path(MILLION));
        assertEquals(MILLION - 1, pass.bridges().cardinality());
        assertEquals(MILLION - 2, pass.cutVertices().cardinality());
        assertEquals(MILLION - 1, pass.blocks().count());
    }

    @Test
    void starOfAMillionHasOneCutVertex() {
        Lowlink pass = Lowlink.of(SmallGraphs.star(MILLION), MILLION - 1);
        assertEquals(bits(0), pass.cutVertices());
        assertEquals(MILLION - 1, pass.bridges().cardinality());
    }

    @Test
    void ringOfAMillionHasNone() {
        int[] from = new int[MILLION];
        int[] to = new int[MILLION];
        for (int v = 0; v < MILLION; v++) {
            from[v] = v;
            to[v] = (v + 1) % MILLION;
        }
        Lowlink pass = Lowlink.of(IndexGraph.undirected(MILLION, from, to));
        assertTrue(pass.bridges().isEmpty());
        assertTrue(pass.cutVertices().isEmpty());
        assertEquals(1, pass.blocks().count());
    }

    @Test
    void refusesADirectedGraph() {
        IndexGraph directed = SmallGraphs.directedOf(2, 0, 1);
        assertThrows(IllegalArgumentException.class, () -> Lowlink.of(directed));
    }

    @Property
    void bridgesAreTheEdgesWhoseRemovalAddsAComponent(@ForAll("graphs") IndexGraph g) {
        Lowlink pass = Lowlink.of(g);
        int before = Components.of(g).count();
        for (int e = 0; e < g.edgeBound(); e++) {
            boolean falls =
                    g.hasEdge(e) && Components.of(g.withoutEdges(bits(e))).count() > before;
            assertEquals(falls, pass.isBridge(e), "edge " + e);
        }
    }

    @Property
    void cutVerticesAreThoseWhoseRemovalAddsAComponent(@ForAll("graphs") IndexGraph g) {
        Lowlink pass = Lowlink.of(g);
        int before = Components.of(g).count();
        for (int v = 0; v < g.vertexCount(); v++) {
            int gone = v;
            IndexGraph without = g.onlyEdges(e -> g.from(e) != gone && g.to(e) != gone);
            // The vertex itself stays behind alone; it is not one of the parts.
            int after = Components.of(without).count() - 1;
            assertEquals(after > before, pass.isCutVertex(v), "vertex " + v);
        }
    }

    @Property
    void agreesWithTheReferenceLibraryWhereverItStartsFrom(@ForAll("graphs") IndexGraph g, @ForAll int start) {
        Graph<Integer, Integer> reference = SmallGraphs.reference(g);
        BiconnectivityInspector<Integer, Integer> inspector = new BiconnectivityInspector<>(reference);
        Lowlink pass = Lowlink.of(g, Math.floorMod(start, g.vertexCount()));
        assertEquals(inspector.getBridges(), boxed(pass.bridges()));
        assertEquals(inspector.getCutpoints(), boxed(pass.cutVertices()));
        assertEquals(edgeSets(inspector, reference), edgeSets(pass.blocks(), g));
    }

    /** The reference library names a block by its vertices; self-loops are left out, it has no blocks for them. */
    private static Set<Set<Integer>> edgeSets(
            BiconnectivityInspector<Integer, Integer> inspector, Graph<Integer, Integer> g) {
        return inspector.getBlocks().stream()
                .map(block -> block.edgeSet().stream()
                        .filter(e -> !g.getEdgeSource(e).equals(g.getEdgeTarget(e)))
                        .collect(Collectors.toSet()))
                .filter(edges -> !edges.isEmpty())
                .collect(Collectors.toSet());
    }

    private static Set<Set<Integer>> edgeSets(Blocks blocks, IndexGraph g) {
        Set<Set<Integer>> sets = new HashSet<>();
        for (int b = 0; b < blocks.count(); b++) {
            Set<Integer> edges = new HashSet<>();
            for (int e : blocks.edges(b)) {
                assertEquals(b, blocks.blockOf(e));
                if (g.from(e) != g.to(e)) {
                    edges.add(e);
                } else {
                    assertEquals(1, blocks.size(b), "a self-loop is alone in its block");
                }
            }
            if (!edges.isEmpty()) {
                sets.add(edges);
            }
        }
        return sets;
    }

    private static BitSet bits(int... set) {
        BitSet bits = new BitSet();
        for (int i : set) {
            bits.set(i);
        }
        return bits;
    }

    private static Set<Integer> boxed(BitSet bits) {
        return bits.stream().boxed().collect(Collectors.toSet());
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return SmallGraphs.undirected();
    }
}
