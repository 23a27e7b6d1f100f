package ringout.graph.loss;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Ties;

/** The ways of the supply: from the lowest packs over conductors and ties either way, through sources and diodes forwards only. */
final class SupplyWays {
    private final PowerGraph power;
    private final Map<Integer, PowerSource> bySource = new HashMap<>();
    private final Map<PowerSource, Integer> regulators = new LinkedHashMap<>();
    private final Map<Integer, Integer> diodesFrom = new TreeMap<>();
    private final Ways ways;

    SupplyWays(Circuit circuit, PowerGraph power, Grain grain) {
        this.power = power;
        WayBuilder builder = new WayBuilder(circuit, grain);
        for (Wire wire : circuit.wiring().wires()) {
            // most conductors carry no supply: those need no place in this graph
            if (power.tree().reaches(wire.fromPin()) && builder.conducts(wire)) {
                builder.wire(wire);
            }
        }
        Items items = Items.of(circuit);
        for (Part part : circuit.wiring().parts()) {
            if (circuit.live().hasEdge(part.edge())
                    && part.origin() instanceof Part.Inner
                    && (Ties.isTie(part) || PowerGraph.isDiode(part))) {
                builder.part(part.from(), part.to(), items.part(part.index()), Ties.isTie(part));
                if (PowerGraph.isDiode(part)) {
                    diodesFrom.merge(power.ties().of(part.from()), 1, Integer::sum);
                }
            }
        }
        List<Integer> starts = new ArrayList<>();
        power.sources().stream().filter(power::works).forEach(source -> source(source, builder, items, starts));
        ways = builder.build(starts);
    }

    private void source(PowerSource source, WayBuilder builder, Items items, List<Integer> starts) {
        boolean pack = source.kind() == PowerSource.Kind.PACK;
        int item = pack || source.part() < 0 ? items.unit(source.unit()) : items.part(source.part());
        bySource.putIfAbsent(item, source);
        if (source.inputs().isEmpty() && (!pack || power.bottom(source).equals(source))) {
            int middle = builder.make(item);
            builder.one(middle, builder.at(source.plus()));
            starts.add(middle);
        } else if (pack) {
            builder.part(source.minus(), source.plus(), item, false);
        }
        for (int input : source.inputs()) {
            regulators.put(source, builder.part(input, source.plus(), item, false));
        }
    }

    Ways ways() {
        return ways;
    }

    /** The regulators and converters among items. */
    List<PowerSource> sourcesAmong(Set<Integer> among) {
        List<PowerSource> found = new ArrayList<>();
        for (int item : among) {
            PowerSource source = bySource.get(item);
            if (source != null && !source.inputs().isEmpty()) {
                found.add(source);
            }
        }
        return found;
    }

    /** Regulators whose output others may stand in for: joined by diodes or on one net with them. */
    Map<PowerSource, Integer> joinedRegulators() {
        Map<PowerSource, Integer> found = new LinkedHashMap<>();
        regulators.forEach((source, node) -> {
            int tie = power.ties().of(source.plus());
            if (diodesFrom.containsKey(tie) || power.lifting(tie).size() > 1) {
                found.put(source, node);
            }
        });
        return found;
    }
}
