package ringout.graph.loss;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.index.IndexGraph;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Ties;

/** Breaks one thing and looks who still lives, by walking the graph until nothing changes: slow, and nothing to get wrong. */
final class Breaking {
    private final Circuit circuit;
    private final PowerGraph whole;
    private final IndexGraph live;
    private final int deadPart;
    private final BitSet zero = new BitSet();
    private final BitSet supply = new BitSet();

    private Breaking(Circuit base, Item item) {
        whole = PowerGraph.of(base);
        circuit = base.without(edges(base, item));
        live = circuit.live();
        deadPart = item.kind() == Item.Kind.REGULATOR ? item.number() : -1;
        for (PowerSource source : whole.sources()) {
            if (whole.works(source) && bottom(source)) {
                spread(zero, source.minus(), true);
                spread(supply, source.plus(), false);
            }
        }
        boolean more = true;
        while (more) {
            more = false;
            for (PowerSource source : whole.sources()) {
                if (whole.works(source) && starts(source) && !supply.get(source.plus())) {
                    spread(supply, source.plus(), false);
                    more = true;
                }
            }
        }
    }

    static Breaking of(Circuit base, Item item) {
        return new Breaking(base, item);
    }

    private boolean bottom(PowerSource source) {
        return source.kind() == PowerSource.Kind.PACK && whole.bottom(source).equals(source);
    }

    private boolean starts(PowerSource source) {
        if (source.part() >= 0 && source.part() == deadPart) {
            return false;
        }
        if (source.kind() == PowerSource.Kind.PACK) {
            return supply.get(source.minus());
        }
        return source.inputs().stream().anyMatch(input -> supply.get(input) && returned(source, input));
    }

    private boolean returned(PowerSource source, int input) {
        for (Consumer taker : whole.consumersOf(source.unit())) {
            if (whole.ties().same(taker.plus(), input) && taker.zero() >= 0 && !zero.get(taker.zero())) {
                return false;
            }
        }
        return true;
    }

    private void spread(BitSet seen, int start, boolean diodesBothWays) {
        ArrayDeque<Integer> open = new ArrayDeque<>(List.of(start));
        seen.set(start);
        while (!open.isEmpty()) {
            int v = open.remove();
            for (int end = live.endSlot(v), s = live.firstSlot(v); s < end; s = live.nextSlot(s, end)) {
                int edge = live.slotEdge(s);
                int w = live.slotVertex(s);
                if (!seen.get(w) && passes(edge, v, diodesBothWays)) {
                    seen.set(w);
                    open.add(w);
                }
            }
        }
    }

    private boolean passes(int edge, int from, boolean diodesBothWays) {
        if (circuit.wiring().kind(edge) != EdgeKind.PART) {
            return true;
        }
        Part part = circuit.wiring().parts().get(circuit.wiring().ref(edge));
        return Ties.isTie(part) || (PowerGraph.isDiode(part) && (diodesBothWays || part.from() == from));
    }

    /** Whether everything a unit draws from is fed and returns. */
    boolean lives(int unit) {
        List<Consumer> loaded = whole.consumersOf(unit).stream()
                .filter(consumer -> !consumer.loads().isEmpty())
                .toList();
        if (!loaded.isEmpty()) {
            return loaded.stream().allMatch(this::lives);
        }
        List<Consumer> drawing =
                whole.consumersOf(unit).stream().filter(Consumer::draws).toList();
        return drawing.isEmpty() || drawing.stream().anyMatch(this::lives);
    }

    private boolean lives(Consumer consumer) {
        return supply.get(consumer.plus()) && (consumer.zero() < 0 || zero.get(consumer.zero()));
    }

    private static int[] edges(Circuit base, Item item) {
        List<Integer> edges = new ArrayList<>();
        Items items = Items.of(base);
        for (Wire wire : base.wiring().wires()) {
            if (items.lead(wire.leadIndex()) == item.index()) {
                edges.add(base.wiring().conductorEdge(wire));
            }
            if (items.plugOf(wire.fromPin()) == item.index()) {
                edges.add(base.wiring().fromContactEdge(wire));
            }
            if (items.plugOf(wire.toPin()) == item.index()) {
                edges.add(base.wiring().toContactEdge(wire));
            }
        }
        if (item.kind() == Item.Kind.WIRE) {
            edges.add(base.wiring().conductorEdge(base.wiring().wires().get(item.number())));
        }
        if (item.kind() == Item.Kind.FUSE || item.kind() == Item.Kind.PART) {
            edges.add(base.wiring().parts().get(item.number()).edge());
        }
        return edges.stream().mapToInt(Integer::intValue).toArray();
    }
}
