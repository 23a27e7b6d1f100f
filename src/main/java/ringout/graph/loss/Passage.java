package ringout.graph.loss;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SupplyTree;
import ringout.graph.power.Ties;

/**
 * Whether one unit lives through another: loses its supply or return with it. For single questions on long lists: looks at
 * one way first and at all of them only when that one passes the unit.
 */
public final class Passage {
    private static final int NOBODY = -2;

    private final Circuit circuit;
    private final Wiring wiring;
    private final PowerGraph power;
    private final BitSet ends = new BitSet();
    /** Units on one way of the return of each 0V point. */
    private final Map<Integer, BitSet> ways = new HashMap<>();

    private Passage(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.power = PowerGraph.of(circuit);
        for (PowerSource source : power.sources()) {
            boolean own = source.kind() != PowerSource.Kind.REGULATOR
                    && source.inputs().isEmpty();
            if (power.works(source) && source.minus() >= 0 && (own || source.kind() == PowerSource.Kind.CONVERTER)) {
                ends.set(source.minus());
            }
        }
    }

    /** The passages of a circuit. */
    public static Passage of(Circuit circuit) {
        return circuit.know(Passage.class, Passage::new);
    }

    /** Whether a unit that is fed and returned is no more so without another. */
    public boolean needs(int unit, int other) {
        boolean may = power.consumersOf(unit).stream()
                .anyMatch(consumer -> onTheWay(consumer.plus(), other) || !returns(consumer, other));
        return may
                && SupplyLoss.of(circuit)
                        .of(unit)
                        .map(items -> items.contains(Items.of(circuit).unit(other)))
                        .orElse(false);
    }

    /** Whether the shortest way of the supply passes a unit, or a regulator between returns through anything else. */
    private boolean onTheWay(int plus, int other) {
        SupplyTree tree = power.tree();
        for (int at = plus; at >= 0; at = tree.pointBefore(at)) {
            int unit = wiring.unitOf(at);
            if (unit == other) {
                return true;
            }
            boolean regulator = tree.partTo(at).filter(part -> part.zero() >= 0).isPresent();
            if (regulator && power.consumersOf(unit).stream().anyMatch(taker -> !returns(taker, other))) {
                return true;
            }
        }
        return false;
    }

    /** Whether a return gets to a pack without passing a unit: by the way known already, else by any. */
    private boolean returns(Consumer consumer, int without) {
        if (consumer.zero() < 0) {
            return true;
        }
        BitSet known = ways.computeIfAbsent(consumer.zero(), zero -> way(zero, NOBODY));
        return (!known.isEmpty() && !known.get(without))
                || !way(consumer.zero(), without).isEmpty();
    }

    /** The units a return passes on its shortest way to a pack without a unit; empty when there is none. */
    private BitSet way(int zero, int without) {
        IndexGraph live = circuit.live();
        Map<Integer, Integer> before = new HashMap<>();
        ArrayDeque<Integer> open = new ArrayDeque<>();
        open.add(zero);
        before.put(zero, zero);
        while (!open.isEmpty()) {
            int v = open.remove();
            if (ends.get(v)) {
                return units(before, v);
            }
            for (int end = live.endSlot(v), s = live.firstSlot(v); s < end; s = live.nextSlot(s, end)) {
                int w = live.slotVertex(s);
                int unit = wiring.unitOf(w);
                boolean barred = unit >= 0 && unit == without;
                if (!barred && passes(live.slotEdge(s)) && before.putIfAbsent(w, v) == null) {
                    open.add(w);
                }
            }
        }
        return new BitSet();
    }

    private BitSet units(Map<Integer, Integer> before, int last) {
        BitSet units = new BitSet();
        int at = last;
        int next = before.getOrDefault(at, at);
        while (true) {
            if (wiring.unitOf(at) >= 0) {
                units.set(wiring.unitOf(at));
            }
            if (next == at) {
                return units;
            }
            at = next;
            next = before.getOrDefault(at, at);
        }
    }

    private boolean passes(int edge) {
        if (wiring.kind(edge) != EdgeKind.PART) {
            return true;
        }
        Part part = wiring.parts().get(wiring.ref(edge));
        return Ties.isTie(part) || PowerGraph.isDiode(part);
    }
}
