package ringout.graph.loss;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;

/**
 * Two things that stand in for each other: two units declared so, or two supply inputs of one unit that diodes inside join.
 *
 * @param a one of them
 * @param b the other
 * @param inputs whether they are inputs of one unit
 */
public record Pair(Side a, Side b, boolean inputs) {
    /**
     * One of the two.
     *
     * @param name its name: of the unit, or of the plug of the input
     * @param unit number of the unit
     * @param supplies where it takes power
     */
    public record Side(String name, int unit, List<Consumer> supplies) {}

    /** The pairs of which both are aboard, in the order of the units. */
    public static List<Pair> of(Circuit circuit) {
        return List.copyOf(circuit.know(Found.class, Found::new).pairs);
    }

    /** Both names, in the order of the alphabet. */
    public String names() {
        return a.name().compareTo(b.name()) <= 0 ? a.name() + " and " + b.name() : b.name() + " and " + a.name();
    }

    /** Items every supply way of both sides passes, the nearest first; without those of the side itself. */
    public List<Integer> commonSupply(Circuit circuit, Roots accepted) {
        SupplyLoss losses = SupplyLoss.of(circuit);
        return common(circuit, accepted, consumer -> losses.supply(consumer.plus()));
    }

    /** Items every return of both sides passes, the nearest first; without those of the side itself. */
    public List<Integer> commonZero(Circuit circuit, Roots accepted) {
        SupplyLoss losses = SupplyLoss.of(circuit);
        return common(circuit, accepted, consumer -> consumer.zero() < 0 ? Set.of() : losses.zero(consumer.zero()));
    }

    private List<Integer> common(Circuit circuit, Roots accepted, Function<Consumer, Set<Integer>> above) {
        Set<Integer> here = above(a, accepted, above);
        Set<Integer> there = above(b, accepted, above);
        here.retainAll(there);
        Items items = Items.of(circuit);
        here.remove(items.unit(a.unit()));
        here.remove(items.unit(b.unit()));
        return List.copyOf(here);
    }

    private static Set<Integer> above(Side side, Roots accepted, Function<Consumer, Set<Integer>> above) {
        Set<Integer> all = new LinkedHashSet<>();
        side.supplies().forEach(consumer -> all.addAll(accepted.below(above.apply(consumer), side.unit())));
        return all;
    }

    /** Finds them once a circuit. */
    private static final class Found {
        private final List<Pair> pairs = new ArrayList<>();
        private final Circuit circuit;
        private final PowerGraph power;

        private Found(Circuit circuit) {
            this.circuit = circuit;
            this.power = PowerGraph.of(circuit);
            units();
            inputs();
        }

        private void units() {
            Directory directory = circuit.wiring().directory();
            Set<Set<Integer>> seen = new HashSet<>();
            for (int unit = 0; unit < circuit.wiring().aircraft().units().size(); unit++) {
                for (String name : directory.unit(unit).redundantWith()) {
                    Optional<Integer> other = directory.find(name);
                    if (other.isPresent()
                            && circuit.aboard(unit)
                            && circuit.aboard(other.get())
                            && other.get() != unit
                            && seen.add(Set.of(unit, other.get()))) {
                        pairs.add(new Pair(side(unit), side(other.get()), false));
                    }
                }
            }
        }

        private Side side(int unit) {
            List<Consumer> taking = power.consumersOf(unit).stream()
                    .filter(consumer -> !consumer.inputs().isEmpty())
                    .toList();
            return new Side(circuit.wiring().directory().name(unit), unit, taking);
        }

        /** Inputs whose diodes lead to one point of their unit. */
        private void inputs() {
            Map<List<Integer>, List<Side>> joined = new LinkedHashMap<>();
            Wiring wiring = circuit.wiring();
            for (Part part : wiring.parts()) {
                if (part.origin() instanceof Part.Inner inner
                        && PowerGraph.isDiode(part)
                        && circuit.aboard(inner.unit())) {
                    for (Consumer consumer : power.consumersOf(inner.unit())) {
                        // the point itself, not its tie: outside the unit both inputs may hang on one net
                        if (consumer.plus() == part.from() && !consumer.inputs().isEmpty()) {
                            List<Side> sides = joined.computeIfAbsent(
                                    List.of(inner.unit(), power.ties().of(part.to())), key -> new ArrayList<>());
                            Side side = new Side(input(consumer), inner.unit(), List.of(consumer));
                            if (!sides.contains(side)) {
                                sides.add(side);
                            }
                        }
                    }
                }
            }
            joined.values().forEach(this::each);
        }

        private void each(List<Side> sides) {
            for (int i = 0; i < sides.size(); i++) {
                for (int j = i + 1; j < sides.size(); j++) {
                    pairs.add(new Pair(sides.get(i), sides.get(j), true));
                }
            }
        }

        private String input(Consumer consumer) {
            int pin = consumer.inputs().get(0);
            return circuit.wiring().plugName(consumer.unit(), circuit.wiring().plugIndex(pin));
        }
    }
}
