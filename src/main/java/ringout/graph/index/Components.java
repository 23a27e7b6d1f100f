package ringout.graph.index;

import java.util.Arrays;

/**
 * The connected components of a graph; direction is ignored.
 *
 * <p>Components are numbered by their lowest vertex, and members ascend: both are independent of the order of edges.
 * One union-find pass over the edges and one counting sort over the vertices, O(n + m) in practice.
 */
public final class Components {

    private final int[] componentOf;
    private final int[] starts;
    private final int[] members;

    private Components(int[] componentOf, int[] starts, int[] members) {
        this.componentOf = componentOf;
        this.starts = starts;
        this.members = members;
    }

    /** {@return the components of the graph, hidden edges not joining anything} */
    public static Components of(IndexGraph graph) {
        UnionFind sets = new UnionFind(graph.vertexCount());
        for (int e = 0; e < graph.edgeBound(); e++) {
            if (graph.hasEdge(e)) {
                sets.union(graph.from(e), graph.to(e));
            }
        }
        return of(sets);
    }

    /** {@return the sets of a union-find, numbered as components} */
    public static Components of(UnionFind sets) {
        int n = sets.elementCount();
        int[] componentOf = new int[n];
        int[] numberOfRoot = new int[n];
        Arrays.fill(numberOfRoot, -1);
        int[] starts = new int[sets.setCount() + 1];
        int count = 0;
        for (int v = 0; v < n; v++) {
            int root = sets.find(v);
            if (numberOfRoot[root] < 0) {
                starts[count + 1] = starts[count] + sets.size(root);
                numberOfRoot[root] = count++;
            }
            componentOf[v] = numberOfRoot[root];
        }
        return new Components(componentOf, starts, sortMembers(componentOf, starts));
    }

    private static int[] sortMembers(int[] componentOf, int[] starts) {
        int[] next = starts.clone();
        int[] members = new int[componentOf.length];
        for (int v = 0; v < componentOf.length; v++) {
            members[next[componentOf[v]]++] = v;
        }
        return members;
    }

    /** {@return the number of components} */
    public int count() {
        return starts.length - 1;
    }

    /** {@return the component of a vertex} */
    public int componentOf(int vertex) {
        return componentOf[vertex];
    }

    /** {@return whether two vertices are connected} */
    public boolean same(int a, int b) {
        return componentOf[a] == componentOf[b];
    }

    /** {@return the number of vertices in a component} */
    public int size(int component) {
        return starts[component + 1] - starts[component];
    }

    /** {@return the i-th vertex of a component, ascending} */
    public int member(int component, int i) {
        if (i < 0 || i >= size(component)) {
            throw new IndexOutOfBoundsException("member " + i + " of " + size(component));
        }
        return members[starts[component] + i];
    }

    /** {@return the vertices of a component, ascending, as a new array} */
    public int[] members(int component) {
        return Arrays.copyOfRange(members, starts[component], starts[component + 1]);
    }

    @Override
    public String toString() {
        return count() + " components of " + members.length + " vertices";
    }
}
