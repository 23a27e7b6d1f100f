package ringout.graph.power;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.Circuit;

/**
 * What every working source may have to feed: directly, through diodes, from below in a stack, and through other
 * regulators. A load behind two sources joined by diodes is behind both.
 */
public final class SourceReach {
    private final PowerGraph power;
    private final Map<Integer, List<PowerSource>> feeding = new HashMap<>();
    private final Map<Integer, List<PowerSource>> above = new HashMap<>();
    private final Map<Integer, List<Consumer>> consumers = new HashMap<>();
    private final Map<Integer, List<PlacedLoad>> loads = new HashMap<>();

    private SourceReach(Circuit circuit) {
        power = PowerGraph.of(circuit);
        for (Consumer consumer : power.consumers()) {
            boolean takes = consumer.draws() || !consumer.loads().isEmpty();
            if (takes && circuit.aboard(consumer.unit())) {
                above(consumer.plus())
                        .forEach(source -> consumers
                                .computeIfAbsent(source.index(), key -> new ArrayList<>())
                                .add(consumer));
            }
        }
        for (PlacedLoad load : power.loads()) {
            if (circuit.aboard(load.unit())) {
                above(load.plus())
                        .forEach(source -> loads.computeIfAbsent(source.index(), key -> new ArrayList<>())
                                .add(load));
            }
        }
    }

    /** {@return the reach of all sources of a circuit, found once} */
    public static SourceReach of(Circuit circuit) {
        return circuit.know(SourceReach.class, SourceReach::new);
    }

    /** {@return the consumers aboard that a source may have to feed, those that take something} */
    public List<Consumer> consumers(PowerSource source) {
        return consumers.getOrDefault(source.index(), List.of());
    }

    /** {@return the loads aboard that a source may have to feed} */
    public List<PlacedLoad> loads(PowerSource source) {
        return loads.getOrDefault(source.index(), List.of());
    }

    /** {@return the working sources that feed a point with no regulator between, found once a tie} */
    public List<PowerSource> feeding(int vertex) {
        return feeding.computeIfAbsent(power.ties().of(vertex), tie -> power.feeding(vertex));
    }

    /** {@return all working sources that what a point takes may come from} */
    public List<PowerSource> above(int vertex) {
        int tie = power.ties().of(vertex);
        List<PowerSource> known = above.get(tie);
        if (known == null) {
            known = find(vertex);
            above.put(tie, known);
        }
        return known;
    }

    private List<PowerSource> find(int vertex) {
        List<PowerSource> found = new ArrayList<>();
        BitSet sources = new BitSet();
        Set<Integer> seen = new HashSet<>();
        ArrayDeque<Integer> open = new ArrayDeque<>(List.of(vertex));
        while (!open.isEmpty()) {
            int next = open.remove();
            if (!seen.add(power.ties().of(next))) {
                continue;
            }
            for (PowerSource source : feeding(next)) {
                if (!sources.get(source.index())) {
                    sources.set(source.index());
                    found.add(source);
                    open.addAll(source.inputs());
                    if (source.minus() >= 0) {
                        open.add(source.minus());
                    }
                }
            }
        }
        return List.copyOf(found);
    }
}
