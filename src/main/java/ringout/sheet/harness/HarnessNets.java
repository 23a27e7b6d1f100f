package ringout.sheet.harness;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/**
 * The nets of the harness by itself, every unit unplugged: contacts joined by conductors and joints, not through units. For each
 * the fewest continuity lines, by a spanning tree over its conductors (breadth first, in time linear in the conductors).
 */
public final class HarnessNets {
    private final Wiring wiring;
    private final List<HarnessNet> nets = new ArrayList<>();
    private final Set<Integer> reached = new HashSet<>();

    private HarnessNets(Wiring wiring) {
        this.wiring = wiring;
        for (Wire wire : wiring.wires()) {
            if (!reached.contains(wire.fromPin())) {
                HarnessNet net = net(isJoint(wire.fromPin()) ? contactNear(wire.fromPin()) : wire.fromPin());
                // Between joints alone there is nothing a plug would show.
                if (!net.pins().isEmpty()) {
                    nets.add(net);
                }
            }
        }
    }

    /** {@return the nets of a harness, in the order of its rows} */
    public static List<HarnessNet> of(Wiring wiring) {
        return List.copyOf(new HarnessNets(wiring).nets);
    }

    private boolean isJoint(int pin) {
        return wiring.directory().isJoint(wiring.unitOf(pin));
    }

    /** The first contact a joint leads to, or the joint itself when it leads to none. */
    private int contactNear(int joint) {
        Set<Integer> seen = new HashSet<>(Set.of(joint));
        Deque<Integer> open = new ArrayDeque<>(List.of(joint));
        while (!open.isEmpty()) {
            int pin = open.remove();
            if (!isJoint(pin)) {
                return pin;
            }
            for (int w : wiring.wiresAt(pin)) {
                int far = wiring.wires().get(w).otherPin(pin);
                if (seen.add(far)) {
                    open.add(far);
                }
            }
        }
        return joint;
    }

    private HarnessNet net(int start) {
        Map<Integer, Wire> by = new HashMap<>();
        Set<Wire> used = new HashSet<>();
        List<Integer> pins = new ArrayList<>();
        List<Wire> loops = new ArrayList<>();
        List<Continuity> lines = new ArrayList<>();
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        reached.add(start);
        while (!open.isEmpty()) {
            int pin = open.remove();
            if (!isJoint(pin)) {
                pins.add(pin);
                line(pin, by).ifPresent(lines::add);
            }
            for (int w : wiring.wiresAt(pin)) {
                Wire wire = wiring.wires().get(w);
                int far = wire.otherPin(pin);
                if (used.add(wire)) {
                    if (reached.add(far)) {
                        by.put(far, wire);
                        open.add(far);
                    } else {
                        loops.add(wire);
                    }
                }
            }
        }
        lines.sort(Comparator.comparingInt(line -> line.wires().get(0).index()));
        return new HarnessNet(pins, lines, loops);
    }

    /** Back along the tree to the nearest contact; nothing for the contact the net starts at. */
    private Optional<Continuity> line(int pin, Map<Integer, Wire> by) {
        List<Wire> way = new ArrayList<>();
        int here = pin;
        do {
            Wire wire = by.get(here);
            if (wire == null) {
                return Optional.empty();
            }
            way.add(0, wire);
            here = wire.otherPin(here);
        } while (isJoint(here));
        return Optional.of(new Continuity(here, pin, way));
    }
}
