package ringout.check.power;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Situation;
import ringout.graph.power.Consumer;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.graph.power.SupplyTree;
import ringout.model.PinRole;

/**
 * The supply contacts of plugs of a bus that feeds its members at 5 V, and who is fed by them. A plug with two supply
 * contacts or more is a supply plug that also carries the bus, not one of the bus.
 */
final class BusPlugs {
    /** Highest nominal voltage of a bus supply of the 5 V kind. */
    private static final double FIVE = 6;

    /**
     * A consumer that takes power by a bus plug.
     *
     * @param consumer the consumer
     * @param pin the supply contact it takes it by
     */
    record Fed(Consumer consumer, int pin) {}

    private final Situation at;
    private final Set<Integer> pins = new TreeSet<>();
    private final List<Fed> fed = new ArrayList<>();
    private final Map<Integer, List<Consumer>> behind = new HashMap<>();
    private final Map<Integer, List<PlacedLoad>> byUnit = new HashMap<>();

    private BusPlugs(Situation at) {
        this.at = at;
        for (int unit = 0; unit < at.directory().count(); unit++) {
            if (at.circuit().aboard(unit) && !at.directory().isJoint(unit)) {
                find(unit);
            }
        }
        if (!pins.isEmpty()) {
            PowerGraph.of(at.circuit()).consumers().forEach(this::follow);
            PowerGraph.of(at.circuit())
                    .loads()
                    .forEach(load -> byUnit.computeIfAbsent(load.unit(), key -> new ArrayList<>())
                            .add(load));
        }
    }

    static BusPlugs of(Situation at) {
        return new BusPlugs(at);
    }

    private void find(int unit) {
        for (int first = at.wiring().firstPin(unit); first < at.wiring().endPin(unit); ) {
            int plug = at.wiring().plugIndex(first);
            int end = at.wiring().endPin(unit, plug);
            int supply = -1;
            int supplies = 0;
            boolean bus = false;
            for (int pin = first; pin < end; pin++) {
                PinRole role = at.wiring().pin(pin).role().or(PinRole.NONE);
                bus |= role == PinRole.CAN_H;
                if (PowerGraph.isSupply(role)) {
                    supply = pin;
                    supplies++;
                }
            }
            if (bus && supplies == 1 && Supplies.wired(at, supply) && isFive(supply)) {
                pins.add(supply);
            }
            first = end;
        }
    }

    private boolean isFive(int pin) {
        for (PowerSource source : SourceReach.of(at.circuit()).feeding(pin)) {
            OptionalDouble nominal = source.volts().nominal();
            if (nominal.orElse(source.volts().low()) <= FIVE) {
                return true;
            }
        }
        return false;
    }

    /** Notes which of the plugs power passes on its way to a consumer, and by which it enters its unit. */
    private void follow(Consumer consumer) {
        boolean takes = consumer.draws() || !consumer.loads().isEmpty();
        if (!takes || !at.circuit().aboard(consumer.unit())) {
            return;
        }
        SupplyTree tree = PowerGraph.of(at.circuit()).tree();
        boolean inside = true;
        for (int v = consumer.plus(); v >= 0; v = tree.pointBefore(v)) {
            boolean pin = at.wiring().isPin(v);
            if (pin && pins.contains(v)) {
                behind.computeIfAbsent(v, key -> new ArrayList<>()).add(consumer);
                if (inside && at.wiring().unitOf(v) == consumer.unit()) {
                    fed.add(new Fed(consumer, v));
                }
            }
            inside &= at.wiring().unitOf(v) == consumer.unit();
            if (tree.edgeTo(v) < 0) {
                break;
            }
        }
    }

    /** The supply contacts. */
    Set<Integer> pins() {
        return pins;
    }

    /** The consumers that take power by one of them, and by which. */
    List<Fed> fed() {
        return fed;
    }

    /** The consumers whose power passes a contact. */
    List<Consumer> behind(int pin) {
        return behind.getOrDefault(pin, List.of());
    }

    /** The loads of a unit. */
    List<PlacedLoad> loads(int unit) {
        return byUnit.getOrDefault(unit, List.of());
    }

    /** The loads of some consumers. */
    List<PlacedLoad> loads(Collection<Consumer> consumers) {
        List<PlacedLoad> found = new ArrayList<>();
        for (Consumer consumer : consumers) {
            for (PlacedLoad load : loads(consumer.unit())) {
                if (load.plus() == consumer.plus()) {
                    found.add(load);
                }
            }
        }
        return found;
    }
}
