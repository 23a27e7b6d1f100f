package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

class DominatorsTest {

    /** The flowgraph of figure 1 in Lengauer and Tarjan (1979), edges from memory; its dominator tree is figure 2. */
    @Test
    void theExampleOfThePaper() {
        String names = "RABCDEFGHIJKL";
        String edges = "RA RB RC AD BA BD BE CF CG DL EH FI GI GJ HE HK IK JI KI KR LH";
        int[] ends = edges.chars().filter(c -> c != ' ').map(names::indexOf).toArray();
        Dominators d = Dominators.of(SmallGraphs.directedOf(names.length(), ends), 0);
        String immediate = "-RRRRRCCRRGRD";
        for (int v = 0; v < names.length(); v++) {
            assertEquals(names.indexOf(immediate.charAt(v)), d.immediate(v), "vertex " + names.charAt(v));
        }
    }

    @Test
    void twoRootsThatFeedTheSameThingDoNotDominateIt() {
        // Packs 0 and 1 through their own diodes 2 and 3 onto rail 4, then fuse 5, then load 6.
        Dominators d = Dominators.of(SmallGraphs.directedOf(7, 0, 2, 1, 3, 2, 4, 3, 4, 4, 5, 5, 6), 0, 1);
        assertArrayEquals(new int[] {5, 4}, d.chain(6));
        assertArrayEquals(new int[] {0}, d.chain(2));
        assertEquals(-1, d.immediate(4));
        assertTrue(d.dominates(4, 6));
        assertFalse(d.dominates(2, 6));
        assertTrue(d.dominates(6, 6));
        assertArrayEquals(new int[] {4, 5, 6}, d.dominatedBy(4));
    }

    @Test
    void rootReachedFromAnotherRootIsStillFedByItself() {
        Dominators d = Dominators.of(SmallGraphs.directedOf(3, 0, 1, 1, 2), 0, 1);
        assertArrayEquals(new int[] {1}, d.chain(2));
        assertEquals(0, d.chain(1).length);
    }

    @Test
    void unreachedHasNoDominator() {
        Dominators d = Dominators.of(SmallGraphs.directedOf(3, 0, 1, 2, 1), 0);
        assertFalse(d.reached(2));
        assertEquals(0, d.dominatedBy(2).length);
        assertFalse(d.dominates(0, 2));
        assertArrayEquals(new int[] {0}, d.chain(1), "what cannot be reached cannot feed");
    }

    @Test
    void pathOfAMillionWithShortcuts() {
        int n = 1_000_000;
        IndexGraphBuilder chain = new IndexGraphBuilder(n);
        for (int v = 1; v < n; v++) {
            chain.addEdge(v - 1, v);
        }
        assertEquals(n - 1, Dominators.of(chain.directed(), 0).chain(n - 1).length);
        // Every vertex of the second half can also be entered from the start: quadratic for the iterative method.
        for (int v = n / 2; v < n; v++) {
            chain.addEdge(n / 2 - 1, v);
            chain.addEdge(0, v);
        }
        assertArrayEquals(new int[] {0}, Dominators.of(chain.directed(), 0).chain(n - 1));
    }

    @Test
    void refusesAnUndirectedGraph() {
        IndexGraph undirected = SmallGraphs.path(2);
        assertThrows(IllegalArgumentException.class, () -> Dominators.of(undirected, 0));
    }

    /** Definition as oracle: without the dominator nothing reaches the vertex. */
    @Property(tries = 2000)
    void dominatorsAreTheVerticesWithoutWhichNothingArrives(
            @ForAll("graphs") IndexGraph g, @ForAll int a, @ForAll int b) {
        int one = Math.floorMod(a, g.vertexCount());
        int two = Math.floorMod(b, g.vertexCount());
        Dominators d = Dominators.of(g, one, two);
        BreadthFirst intact = BreadthFirst.from(g, one, two);
        for (int gone = 0; gone < g.vertexCount(); gone++) {
            int out = gone;
            IndexGraph without = g.onlyEdges(e -> g.from(e) != out && g.to(e) != out);
            int[] rootsLeft =
                    Arrays.stream(new int[] {one, two}).filter(r -> r != out).toArray();
            BreadthFirst left = BreadthFirst.from(without, rootsLeft);
            for (int v = 0; v < g.vertexCount(); v++) {
                assertEquals(intact.reached(v), d.reached(v));
                boolean lost = intact.reached(v) && !left.reached(v);
                assertEquals(lost, d.dominates(gone, v), gone + " over " + v);
                assertEquals(lost && v != gone, contains(d.chain(v), gone));
                assertEquals(lost, contains(d.dominatedBy(gone), v));
            }
        }
    }

    @Property
    void chainStepsFromOneImmediateDominatorToTheNext(@ForAll("graphs") IndexGraph g) {
        Dominators d = Dominators.of(g, 0);
        for (int v = 0; v < g.vertexCount(); v++) {
            int at = v;
            for (int above : d.chain(v)) {
                assertEquals(d.immediate(at), above);
                at = above;
            }
            assertEquals(-1, d.immediate(at));
        }
    }

    private static boolean contains(int[] array, int value) {
        return Arrays.stream(array).anyMatch(x -> x == value);
    }

    @Provide
    Arbitrary<IndexGraph> graphs() {
        return SmallGraphs.directed();
    }
}
