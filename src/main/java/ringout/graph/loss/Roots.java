package ringout.graph.loss;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ringout.graph.Circuit;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;

/** What a project accepts as common to both of a redundant pair: units, leads, plugs by name, and all that lies before them. */
public final class Roots {
    private final Items items;
    private final Circuit circuit;
    private final Set<String> accepted = new LinkedHashSet<>();
    private @Nullable Set<Integer> before;

    private Roots(Circuit circuit) {
        this.circuit = circuit;
        this.items = Items.of(circuit);
        circuit.wiring()
                .aircraft()
                .project()
                .acceptedCommon()
                .forEach(name -> accepted.add(name.strip().toUpperCase(Locale.ROOT)));
    }

    /** The accepted roots of the project of a circuit. */
    public static Roots of(Circuit circuit) {
        return circuit.know(Roots.class, Roots::new);
    }

    /** Whether nothing is accepted. */
    public boolean none() {
        return accepted.isEmpty();
    }

    /** Whether an item is accepted, is of an accepted unit, or lies before one on every way of its supply or return. */
    public boolean holds(Item item) {
        if (!accepted.isEmpty() && before == null) {
            before = before();
        }
        return before != null && (before.contains(item.index()) || accepts(item, -1));
    }

    private Set<Integer> before() {
        Set<Integer> found = new HashSet<>();
        SupplyLoss losses = SupplyLoss.of(circuit);
        for (Consumer consumer : PowerGraph.of(circuit).consumers()) {
            if (named(circuit.wiring().directory().name(consumer.unit()))) {
                found.addAll(losses.supply(consumer.plus()));
                if (consumer.zero() >= 0) {
                    found.addAll(losses.zero(consumer.zero()));
                }
            }
        }
        return found;
    }

    /** The items of a way, nearest first, up to the first that is accepted; a unit is not accepted to be common to itself. */
    List<Integer> below(Set<Integer> above, int unit) {
        return above.stream()
                .takeWhile(item -> !accepts(items.item(item), unit))
                .toList();
    }

    private boolean accepts(Item item, int own) {
        if (accepted.isEmpty() || item.unit() == own) {
            return false;
        }
        boolean byUnit = item.unit() >= 0 && named(circuit.wiring().directory().name(item.unit()));
        return byUnit || named(item.name());
    }

    private boolean named(String name) {
        return accepted.contains(name.toUpperCase(Locale.ROOT));
    }
}
