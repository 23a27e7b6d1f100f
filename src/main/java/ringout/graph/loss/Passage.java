package ringout.graph.loss;

import java.util.ArrayDeque;
import java.util.BitSet;
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
    private final Circuit circuit;
    private final Wiring wiring;
    private final PowerGraph power;
    private final BitSet ends = new BitSet();

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

    /** Whether a return gets to a pack without passing a unit. */
    private boolean returns(Consumer consumer, int without) {
        if (consumer.zero() < 0) {
            return true;
        }
        IndexGraph live = circuit.live();
        BitSet seen = new BitSet();
        ArrayDeque<Integer> open = new ArrayDeque<>();
        open.add(consumer.zero());
        seen.set(consumer.zero());
        while (!open.isEmpty()) {
            int v = open.remove();
            if (ends.get(v)) {
                return true;
            }
            for (int end = live.endSlot(v), s = live.firstSlot(v); s < end; s = live.nextSlot(s, end)) {
                int w = live.slotVertex(s);
                if (!seen.get(w) && wiring.unitOf(w) != without && passes(live.slotEdge(s))) {
                    seen.set(w);
                    open.add(w);
                }
            }
        }
        return false;
    }

    private boolean passes(int edge) {
        if (wiring.kind(edge) != EdgeKind.PART) {
            return true;
        }
        Part part = wiring.parts().get(wiring.ref(edge));
        return Ties.isTie(part) || PowerGraph.isDiode(part);
    }
}
