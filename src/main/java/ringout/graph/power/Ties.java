package ringout.graph.power;

import java.util.Arrays;
import ringout.graph.Circuit;
import ringout.graph.Nets;
import ringout.graph.Part;
import ringout.graph.index.UnionFind;
import ringout.model.PartKind;

/**
 * Nets that lie at one voltage at rest: those joined by parts that drop next to nothing, which are links, fuses, closed
 * switches and sense resistors. Battery 0V and load 0V on the two sides of a sense resistor are two nets, but one tie.
 */
public final class Ties {
    private final Nets nets;
    private final int[] tieOfNet;
    private final int count;

    private Ties(Circuit circuit) {
        nets = circuit.nets();
        UnionFind sets = new UnionFind(nets.count());
        for (Part part : circuit.wiring().parts()) {
            if (isTie(part) && circuit.live().hasEdge(part.edge())) {
                sets.union(nets.of(part.from()), nets.of(part.to()));
            }
        }
        tieOfNet = new int[nets.count()];
        Arrays.fill(tieOfNet, -1);
        int next = 0;
        for (int net = 0; net < tieOfNet.length; net++) {
            int root = sets.find(net);
            if (tieOfNet[root] < 0) {
                tieOfNet[root] = next++;
            }
            tieOfNet[net] = tieOfNet[root];
        }
        count = next;
    }

    /** The ties of a circuit, found once. */
    public static Ties of(Circuit circuit) {
        return circuit.know(Ties.class, Ties::new);
    }

    /** Whether a part drops next to nothing when it is closed. */
    public static boolean isTie(Part part) {
        if (part.origin() instanceof Part.Inner inner) {
            return inner.part().kind().known().map(Ties::isTie).orElse(false);
        }
        return part.origin() instanceof Part.LeadFuse;
    }

    private static boolean isTie(PartKind kind) {
        return switch (kind) {
            case LINK, FUSE, SWITCH, SENSE_RESISTOR -> true;
            default -> false;
        };
    }

    /** The tie of a vertex. */
    public int of(int vertex) {
        return tieOfNet[nets.of(vertex)];
    }

    /** The tie of a net. */
    public int ofNet(int net) {
        return tieOfNet[net];
    }

    /** Number of ties, single contacts included. */
    public int count() {
        return count;
    }

    /** Whether two vertices lie at one voltage at rest. */
    public boolean same(int a, int b) {
        return of(a) == of(b);
    }
}
