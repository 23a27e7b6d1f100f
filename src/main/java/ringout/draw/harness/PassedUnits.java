package ringout.draw.harness;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.IntPredicate;
import ringout.graph.EdgeKind;
import ringout.graph.Wiring;

/** Units that power enters and leaves by leads with no source of their own in between. */
final class PassedUnits {
    private final Wiring wiring;
    private final IntPredicate source;
    private final Set<Integer> passed = new HashSet<>();

    /** Looks with a test that tells whether an edge is a source. */
    PassedUnits(Wiring wiring, IntPredicate source) {
        this.wiring = wiring;
        this.source = source;
    }

    /** Follows a way from a pack. */
    void follow(int start, List<Integer> way) {
        int entered = -1;
        int v = start;
        for (int edge : way) {
            int next = wiring.graph().from(edge) == v
                    ? wiring.graph().to(edge)
                    : wiring.graph().from(edge);
            if (wiring.kind(edge) == EdgeKind.CONTACT && wiring.isPin(next)) {
                entered = wiring.unitOf(next);
            } else if (wiring.kind(edge) == EdgeKind.CONTACT && entered >= 0) {
                passed.add(entered);
                entered = -1;
            } else if (source.test(edge)) {
                entered = -1;
            }
            v = next;
        }
    }

    boolean contains(int unit) {
        return passed.contains(unit);
    }
}
