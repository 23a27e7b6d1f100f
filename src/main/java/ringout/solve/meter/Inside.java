package ringout.solve.meter;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.Wiring;
import ringout.model.PinRole;
import ringout.solve.MeterElement;

/**
 * What may conduct although the list does not say so: the inside of units that are more than wire. Capacitors, protection
 * diodes and windings read anything from milliohms to megohms on an unpowered unit.
 */
final class Inside {
    private final Probed probed;
    private final Wiring wiring;
    private final Map<Integer, Integer> cameFrom = new HashMap<>();
    private final Set<Integer> entered = new HashSet<>();
    private final Set<Integer> jumped = new HashSet<>();
    private final Deque<Integer> open = new ArrayDeque<>();

    private Inside(Probed probed) {
        this.probed = probed;
        this.wiring = probed.wiring();
    }

    /** The units that lie between the two points on the way through the fewest of them; empty when none does. */
    static List<String> between(Probed probed) {
        return probed.connected() ? List.of() : new Inside(probed).search();
    }

    private List<String> search() {
        cameFrom.put(probed.a(), probed.a());
        open.add(probed.a());
        while (!open.isEmpty()) {
            int vertex = open.removeFirst();
            if (vertex == probed.b()) {
                return units();
            }
            for (int number : probed.network().at(vertex)) {
                MeterElement element = probed.element(number);
                if (element.live()) {
                    note(vertex, element.other(vertex), true);
                }
            }
            int unit = wiring.unitOf(vertex);
            if (unit >= 0 && entered.add(unit) && opaque(unit)) {
                enter(vertex, unit);
            }
        }
        return List.of();
    }

    /** Conductors first, so that the way goes through the fewest units. */
    private void note(int from, int to, boolean wire) {
        if (cameFrom.putIfAbsent(to, from) != null) {
            return;
        }
        if (wire) {
            open.addFirst(to);
        } else {
            jumped.add(to);
            open.addLast(to);
        }
    }

    private void enter(int vertex, int unit) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (!wiring.is(pin, PinRole.NONE)) {
                note(vertex, pin, false);
            }
        }
    }

    private boolean opaque(int unit) {
        if (!probed.circuit().aboard(unit)) {
            return false;
        }
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (!plain(wiring.role(pin).orElse(PinRole.LOGIC_IN))) {
                return true;
            }
        }
        return false;
    }

    private static boolean plain(PinRole role) {
        return role == PinRole.PASSIVE
                || role == PinRole.SUPPLY_THROUGH
                || role == PinRole.ZERO_V
                || role == PinRole.NONE;
    }

    private List<String> units() {
        List<String> units = new ArrayList<>();
        int vertex = probed.b();
        while (vertex != probed.a()) {
            Integer before = cameFrom.get(vertex);
            if (before == null) {
                return List.of();
            }
            if (jumped.contains(vertex)) {
                units.add(0, wiring.directory().name(wiring.unitOf(vertex)));
            }
            vertex = before;
        }
        return units;
    }
}
