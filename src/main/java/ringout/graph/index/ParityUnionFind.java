package ringout.graph.index;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Disjoint sets whose elements are in one of two classes, like H and L of a pair: any two related elements are known to
 * be of the same or of opposite class. A statement that contradicts the earlier ones is refused and remembered. Two
 * swaps in a row cancel, as they do in a harness. Near-constant time a statement.
 */
public final class ParityUnionFind {
    /** Parent of an element, or minus the size of the set if the element stands for its set. */
    private final int[] link;

    /** Elements of the class opposite to that of their parent. */
    private final BitSet odd = new BitSet();

    /** Elements that stand for a set with a contradiction in it. */
    private final BitSet contradictory = new BitSet();

    /** What is known about two elements. */
    public enum Relation {
        /** They are of one class. */
        SAME,
        /** They are of different classes. */
        OPPOSITE,
        /** Nothing relates them. */
        UNKNOWN
    }

    /** Every element of {@code 0 .. count-1} unrelated to the others. */
    public ParityUnionFind(int count) {
        link = new int[count];
        Arrays.fill(link, -1);
    }

    /** {@return whether the statement that two elements are of one class agrees with what was stated before} */
    public boolean same(int a, int b) {
        return state(a, b, false);
    }

    /** {@return whether the statement that two elements are of opposite classes agrees with what was stated before} */
    public boolean opposite(int a, int b) {
        return state(a, b, true);
    }

    private boolean state(int a, int b, boolean opposite) {
        int ra = find(a);
        int rb = find(b);
        boolean differ = odd.get(a) ^ odd.get(b);
        if (ra == rb) {
            if (differ != opposite) {
                contradictory.set(ra);
            }
            return differ == opposite;
        }
        boolean aIsLarger = link[ra] <= link[rb];
        int root = aIsLarger ? ra : rb;
        int child = aIsLarger ? rb : ra;
        link[root] += link[child];
        link[child] = root;
        odd.set(child, differ ^ opposite);
        if (contradictory.get(child)) {
            contradictory.set(root);
        }
        return true;
    }

    /** {@return the element that stands for the set of the given one; afterwards the element links to it directly} */
    private int find(int element) {
        int root = element;
        boolean parity = false;
        while (link[root] >= 0) {
            parity ^= odd.get(root);
            root = link[root];
        }
        int e = element;
        while (e != root) {
            int up = link[e];
            boolean rest = parity ^ odd.get(e);
            odd.set(e, parity);
            link[e] = root;
            parity = rest;
            e = up;
        }
        return root;
    }

    /** {@return what follows from the statements that were accepted} */
    public Relation relation(int a, int b) {
        if (find(a) != find(b)) {
            return Relation.UNKNOWN;
        }
        return odd.get(a) == odd.get(b) ? Relation.SAME : Relation.OPPOSITE;
    }

    /** {@return whether a statement about the set of the element was refused} */
    public boolean isContradictory(int element) {
        return contradictory.get(find(element));
    }

    /** {@return the number of elements related to the given one, itself included} */
    public int size(int element) {
        return -link[find(element)];
    }
}
