package ringout.graph;

import ringout.graph.index.Components;
import ringout.graph.index.IndexGraph;

/** The nets of a circuit: all that is one electrical point by conductors, mated contacts and joins inside units. */
public final class Nets {
    private final Wiring wiring;
    private final IndexGraph joined;
    private final Components components;

    Nets(Wiring wiring, IndexGraph joined) {
        this.wiring = wiring;
        this.joined = joined;
        this.components = Components.of(joined);
    }

    /** Number of nets, single contacts included. */
    public int count() {
        return components.count();
    }

    /** The net of a vertex. */
    public int of(int vertex) {
        return components.componentOf(vertex);
    }

    /** Whether two vertices are one point. */
    public boolean same(int a, int b) {
        return components.same(a, b);
    }

    /** Number of vertices of a net. */
    public int size(int net) {
        return components.size(net);
    }

    /** A vertex of a net; pins come before points and wire ends. */
    public int member(int net, int i) {
        return components.member(net, i);
    }

    /** The pins of a net, ascending. */
    public int[] pins(int net) {
        int[] members = components.members(net);
        int count = 0;
        while (count < members.length && wiring.isPin(members[count])) {
            count++;
        }
        return java.util.Arrays.copyOf(members, count);
    }

    /** The graph whose components are the nets. */
    public IndexGraph graph() {
        return joined;
    }
}
