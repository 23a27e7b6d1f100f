package ringout.graph.power;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Part;

/**
 * Which sources work in a state and which ties they reach: a pack works when it is aboard and not declared off, a regulator
 * when its input can be fed. One pass over sources and diodes.
 */
final class Feeding {
    private final Circuit circuit;
    private final Ties ties;
    private final List<PowerSource> sources;
    private final Map<Integer, List<Integer>> byInput = new HashMap<>();
    private final Map<Integer, List<Diode>> byAnode = new HashMap<>();
    private final ArrayDeque<Integer> open = new ArrayDeque<>();
    final List<Diode> diodes = new ArrayList<>();
    final BitSet on = new BitSet();
    /** Ties that a working source or a conducting diode touches. */
    final BitSet live = new BitSet();

    Feeding(Circuit circuit, Ties ties, List<PowerSource> sources) {
        this.circuit = circuit;
        this.ties = ties;
        this.sources = sources;
        for (Part part : circuit.wiring().parts()) {
            if (circuit.live().hasEdge(part.edge())) {
                Diode.of(circuit.wiring(), part, ties).ifPresent(diode -> {
                    diodes.add(diode);
                    byAnode.computeIfAbsent(diode.anode(), key -> new ArrayList<>())
                            .add(diode);
                });
            }
        }
        for (PowerSource source : sources) {
            if (source.inputs().isEmpty()) {
                start(source);
            }
            for (int input : source.inputs()) {
                byInput.computeIfAbsent(ties.of(input), key -> new ArrayList<>())
                        .add(source.index());
            }
        }
        spread();
    }

    private void spread() {
        while (!open.isEmpty()) {
            int tie = open.remove();
            for (int source : byInput.getOrDefault(tie, List.of())) {
                start(sources.get(source));
            }
            for (Diode diode : byAnode.getOrDefault(tie, List.of())) {
                reach(diode.cathode());
            }
        }
    }

    private void start(PowerSource source) {
        if (on.get(source.index()) || !works(source)) {
            return;
        }
        on.set(source.index());
        reach(ties.of(source.plus()));
        if (source.minus() >= 0) {
            reach(ties.of(source.minus()));
        }
    }

    private boolean works(PowerSource source) {
        if (!circuit.aboard(source.unit()) || circuit.off(source.unit())) {
            return false;
        }
        if (source.part() < 0) {
            return true;
        }
        Part part = circuit.wiring().parts().get(source.part());
        return circuit.live().hasEdge(part.edge()) && !off(part);
    }

    private boolean off(Part part) {
        if (circuit.state().off().isEmpty() || !(part.origin() instanceof Part.Inner inner)) {
            return false;
        }
        String unit = circuit.wiring().directory().name(inner.unit());
        return circuit.state().off().contains(unit + ":" + inner.part().name());
    }

    private void reach(int tie) {
        if (!live.get(tie)) {
            live.set(tie);
            open.add(tie);
        }
    }
}
