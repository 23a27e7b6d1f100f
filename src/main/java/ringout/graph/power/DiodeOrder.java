package ringout.graph.power;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Takes diodes in an order in which all diodes into a tie come before those out of it, so that a combiner of combiners is
 * settled in one pass. Diodes in a circle come last, as listed.
 */
final class DiodeOrder {
    private final List<Diode> diodes;
    private final int[] waiting;

    DiodeOrder(List<Diode> diodes, int ties) {
        this.diodes = diodes;
        this.waiting = new int[ties];
        diodes.forEach(diode -> waiting[diode.cathode()]++);
    }

    void run(Consumer<Diode> action) {
        Map<Integer, List<Diode>> byAnode = new HashMap<>();
        ArrayDeque<Diode> ready = new ArrayDeque<>();
        BitSet done = new BitSet();
        for (Diode diode : diodes) {
            byAnode.computeIfAbsent(diode.anode(), key -> new ArrayList<>()).add(diode);
            if (waiting[diode.anode()] == 0) {
                ready.add(diode);
            }
        }
        while (!ready.isEmpty()) {
            Diode diode = ready.remove();
            done.set(diode.part());
            action.accept(diode);
            if (--waiting[diode.cathode()] == 0) {
                ready.addAll(byAnode.getOrDefault(diode.cathode(), List.of()));
            }
        }
        diodes.stream().filter(diode -> !done.get(diode.part())).forEach(action);
    }
}
