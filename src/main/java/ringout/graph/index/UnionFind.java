package ringout.graph.index;

import java.util.Arrays;

/**
 * Disjoint sets with union by size and path halving: near-constant time an operation.
 *
 * <p>Source: R. E. Tarjan and J. van Leeuwen, Worst-case analysis of set union algorithms, Journal of the ACM 31 (1984).
 */
public final class UnionFind {

    /** Parent of an element, or minus the size of the set if the element stands for its set. */
    private final int[] link;

    private int setCount;

    /** Every element of {@code 0 .. count-1} in a set of its own. */
    public UnionFind(int count) {
        link = new int[count];
        Arrays.fill(link, -1);
        setCount = count;
    }

    /** {@return the element that stands for the set of the given one} */
    public int find(int element) {
        int e = element;
        while (link[e] >= 0) {
            int up = link[e];
            if (link[up] >= 0) {
                link[e] = link[up];
            }
            e = up;
        }
        return e;
    }

    /** {@return joins two sets; false if they already were one} */
    public boolean union(int a, int b) {
        int ra = find(a);
        int rb = find(b);
        if (ra == rb) {
            return false;
        }
        boolean aIsLarger = link[ra] <= link[rb];
        int root = aIsLarger ? ra : rb;
        int child = aIsLarger ? rb : ra;
        link[root] += link[child];
        link[child] = root;
        setCount--;
        return true;
    }

    /** {@return whether two elements are in one set} */
    public boolean same(int a, int b) {
        return find(a) == find(b);
    }

    /** {@return the number of elements in the set of the given one} */
    public int size(int element) {
        return -link[find(element)];
    }

    /** {@return the number of sets} */
    public int setCount() {
        return setCount;
    }

    /** {@return the number of elements} */
    public int elementCount() {
        return link.length;
    }
}
