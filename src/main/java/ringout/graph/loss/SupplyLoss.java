package ringout.graph.loss;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;

/**
 * What takes the supply of a point or unit when it lets go alone: everything on all ways from the packs, everything on all
 * ways of the return, and the returns of the regulators between. A cut that only lowers capacity takes nothing; a return
 * that is left but too thin for the average current counts as gone.
 *
 * <p>Does not see that a supply way which is left is too thin, nor a regulator that cannot carry all alone.
 */
public final class SupplyLoss {
    private final PowerGraph power;
    private final Circuit circuit;
    private final SupplyWays supply;
    private final ReturnWays returns;
    /** Items that take several regulators at once or stand at several places, and what supply is left without them. */
    private final Map<Integer, BitSet> together = new TreeMap<>();

    private final Map<Integer, Optional<Set<Integer>>> byUnit = new HashMap<>();

    private SupplyLoss(Circuit circuit, Grain grain) {
        this.circuit = circuit;
        power = PowerGraph.of(circuit);
        supply = new SupplyWays(circuit, power, grain);
        returns = new ReturnWays(circuit, power, grain);
        Ways ways = supply.ways();
        ways.scattered().forEach(item -> together.put(item, ways.reachedWithout(ways.places(item))));
        Map<Integer, List<Integer>> takes = new TreeMap<>();
        supply.joinedRegulators().forEach((source, node) -> {
            for (int item : regulatorReturn(source)) {
                takes.computeIfAbsent(item, key -> new ArrayList<>()).add(node);
            }
        });
        Map<List<Integer>, BitSet> known = new HashMap<>();
        takes.forEach((item, nodes) -> {
            if (nodes.size() > 1) {
                List<Integer> gone = new ArrayList<>(ways.places(item));
                gone.addAll(nodes);
                together.put(item, known.computeIfAbsent(gone, ways::reachedWithout));
            }
        });
    }

    /** The losses of a circuit, found once. */
    public static SupplyLoss of(Circuit circuit) {
        return circuit.know(SupplyLoss.class, one -> new SupplyLoss(one, Grain.LEAD));
    }

    /** The losses when single conductors open, whatever what is left may carry. */
    static SupplyLoss byWire(Circuit circuit) {
        return new SupplyLoss(circuit, Grain.WIRE);
    }

    /** Items without which a point is not at its voltage: of its supply and of the returns of the regulators on the way. */
    Set<Integer> point(int vertex) {
        Set<Integer> found = supply.ways().above(vertex);
        for (PowerSource source : supply.sourcesAmong(found)) {
            found.addAll(regulatorReturn(source));
        }
        return found;
    }

    /** Items every way of the supply to a point passes, the nearest first: plugs, leads, parts, units. */
    public Set<Integer> supply(int vertex) {
        return supply.ways().above(vertex);
    }

    /** Items every return from a point passes, the nearest first, whatever they carry. */
    public Set<Integer> zero(int vertex) {
        return returns.above(vertex, 0);
    }

    /** Whether power comes to a point. */
    public boolean reaches(int vertex) {
        return supply.ways().reaches(vertex);
    }

    private Set<Integer> regulatorReturn(PowerSource source) {
        Set<Integer> found = new LinkedHashSet<>();
        for (int input : source.inputs()) {
            for (Consumer taker : power.consumersOf(source.unit())) {
                if (taker.zero() >= 0 && power.ties().same(taker.plus(), input)) {
                    found.addAll(returns.above(taker.zero(), power.demand().averageA(taker.plus())));
                }
            }
        }
        return found;
    }

    /** Items that take power from a consumer; nothing when it has none even so. */
    public Optional<Set<Integer>> of(Consumer consumer) {
        Ways ways = supply.ways();
        int plus = consumer.plus();
        boolean returned = consumer.zero() < 0 || returns.reaches(consumer.zero());
        if (!ways.reaches(plus) || !returned) {
            return Optional.empty();
        }
        Set<Integer> found = ways.above(plus);
        for (PowerSource source : supply.sourcesAmong(found)) {
            found.addAll(regulatorReturn(source));
        }
        if (consumer.zero() >= 0) {
            found.addAll(returns.above(consumer.zero(), power.demand().averageA(plus)));
        }
        together.forEach((item, left) -> {
            if (!left.get(ways.node(plus))) {
                found.add(item);
            }
        });
        return Optional.of(found);
    }

    /**
     * Items that take power from a unit, ascending; nothing when it has none even so. Of a unit that says what it draws every rail
     * that draws must live, of another any of its inputs. A unit that takes no supply loses none.
     */
    public Optional<Set<Integer>> of(int unit) {
        Optional<Set<Integer>> known = byUnit.get(unit);
        if (known == null) {
            known = find(unit);
            byUnit.put(unit, known);
        }
        return known;
    }

    private Optional<Set<Integer>> find(int unit) {
        if (!circuit.aboard(unit)) {
            return Optional.empty();
        }
        List<Consumer> all = power.consumersOf(unit);
        List<Consumer> loaded =
                all.stream().filter(consumer -> !consumer.loads().isEmpty()).toList();
        return loaded.isEmpty() ? any(all.stream().filter(Consumer::draws).toList()) : every(loaded);
    }

    private Optional<Set<Integer>> every(List<Consumer> needs) {
        Set<Integer> found = new TreeSet<>();
        for (Consumer need : needs) {
            Optional<Set<Integer>> items = of(need);
            if (items.isEmpty()) {
                return Optional.empty();
            }
            found.addAll(items.get());
        }
        return Optional.of(found);
    }

    private Optional<Set<Integer>> any(List<Consumer> inputs) {
        Optional<Set<Integer>> found = inputs.isEmpty() ? Optional.of(new TreeSet<>()) : Optional.empty();
        for (Consumer input : inputs) {
            Optional<Set<Integer>> items = of(input);
            if (items.isPresent()) {
                Set<Integer> common = new TreeSet<>(items.get());
                found.ifPresent(common::retainAll);
                found = Optional.of(common);
            }
        }
        return found;
    }
}
