package ringout.graph.index;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import ringout.graph.index.ParityUnionFind.Relation;

class UnionFindTest {
    private static final int ELEMENTS = 9;

    /** One statement about two elements. */
    record Statement(int a, int b, boolean opposite) {}

    @Test
    void oneSwapShowsTwoSwapsCancel() {
        ParityUnionFind pairs = new ParityUnionFind(4);
        assertTrue(pairs.opposite(0, 1));
        assertTrue(pairs.same(1, 2));
        assertEquals(Relation.OPPOSITE, pairs.relation(0, 2));
        assertTrue(pairs.opposite(2, 3));
        assertEquals(Relation.SAME, pairs.relation(0, 3));
        assertFalse(pairs.opposite(0, 3), "a ring with an odd number of swaps");
        assertTrue(pairs.isContradictory(1));
    }

    @Test
    void anElementIsNotOppositeToItself() {
        ParityUnionFind pairs = new ParityUnionFind(2);
        assertTrue(pairs.same(0, 0));
        assertFalse(pairs.opposite(0, 0));
        assertFalse(pairs.isContradictory(1));
        assertEquals(Relation.UNKNOWN, pairs.relation(0, 1));
    }

    @Test
    void aContradictionSurvivesTheJoiningOfSets() {
        ParityUnionFind pairs = new ParityUnionFind(6);
        pairs.opposite(0, 0);
        pairs.same(1, 2);
        pairs.same(2, 3);
        pairs.same(3, 0);
        assertTrue(pairs.isContradictory(1));
        assertEquals(4, pairs.size(0));
    }

    @Test
    void aMillionInALineSwappedAtEveryStep() {
        int n = 1_000_000;
        ParityUnionFind pairs = new ParityUnionFind(n);
        UnionFind sets = new UnionFind(n);
        for (int i = 1; i < n; i++) {
            pairs.opposite(i - 1, i);
            sets.union(i - 1, i);
        }
        assertEquals(Relation.OPPOSITE, pairs.relation(0, n - 1));
        assertEquals(n, sets.size(17));
        assertEquals(1, sets.setCount());
    }

    /** Oracle: a table of set and class, rewritten in full at every statement. */
    @Property
    void agreesWithATableRewrittenInFull(@ForAll("statements") List<Statement> statements) {
        ParityUnionFind pairs = new ParityUnionFind(ELEMENTS);
        UnionFind sets = new UnionFind(ELEMENTS);
        int[] set = new int[ELEMENTS];
        boolean[] swapped = new boolean[ELEMENTS];
        boolean[] broken = new boolean[ELEMENTS];
        Arrays.setAll(set, i -> i);
        for (Statement s : statements) {
            boolean flip = swapped[s.a] ^ swapped[s.b] ^ s.opposite;
            boolean apart = set[s.a] != set[s.b];
            assertEquals(apart || !flip, s.opposite ? pairs.opposite(s.a, s.b) : pairs.same(s.a, s.b));
            assertEquals(apart, sets.union(s.a, s.b));
            broken[set[s.a]] |= broken[set[s.b]] || (!apart && flip);
            int old = set[s.b];
            for (int i = 0; apart && i < ELEMENTS; i++) {
                if (set[i] == old) {
                    set[i] = set[s.a];
                    swapped[i] ^= flip;
                }
            }
        }
        assertEquals(Arrays.stream(set).distinct().count(), sets.setCount());
        for (int a = 0; a < ELEMENTS; a++) {
            int mine = set[a];
            assertEquals(broken[mine], pairs.isContradictory(a));
            assertEquals(Arrays.stream(set).filter(x -> x == mine).count(), pairs.size(a));
            assertEquals(pairs.size(a), sets.size(a));
            for (int b = 0; b < ELEMENTS; b++) {
                Relation expected = set[a] != set[b]
                        ? Relation.UNKNOWN
                        : swapped[a] == swapped[b] ? Relation.SAME : Relation.OPPOSITE;
                assertEquals(expected, pairs.relation(a, b));
                assertEquals(set[a] == set[b], sets.same(a, b));
            }
        }
    }

    @Provide
    Arbitrary<List<Statement>> statements() {
        Arbitrary<Integer> element = Arbitraries.integers().between(0, ELEMENTS - 1);
        return Combinators.combine(element, element, Arbitraries.of(true, false))
                .as(Statement::new)
                .list()
                .ofMaxSize(14);
    }
}
