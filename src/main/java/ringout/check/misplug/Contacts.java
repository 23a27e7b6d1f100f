package ringout.check.misplug;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.check.form.Figures;
import ringout.graph.Circuit;
import ringout.graph.TypeLayout;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.Volts;
import ringout.model.Pin;
import ringout.model.PinRole;

/** What the contacts of a socket are, as far as it matters for what comes of a wrong plug in it. */
final class Contacts {
    private Contacts() {}

    /** Roles in order, supplies with their voltage; sockets of equal words behave alike. */
    static List<String> of(Circuit circuit, int unit, int plug) {
        Wiring wiring = circuit.wiring();
        List<String> words = new ArrayList<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            Pin contact = wiring.pin(pin);
            String role = contact.role().known().map(PinRole::word).orElse("?");
            words.add(supply(contact) ? role + " " + volts(circuit, pin) : role);
        }
        return words;
    }

    static boolean supply(Pin pin) {
        return pin.role()
                .known()
                .filter(role -> role == PinRole.SUPPLY_IN
                        || role == PinRole.SUPPLY_OUT
                        || role == PinRole.SUPPLY_THROUGH
                        || role == PinRole.PACK_PLUS
                        || role == PinRole.PACK_MINUS)
                .isPresent();
    }

    /** Voltage at rest of a supply contact in the list as it is; the name of its rail where nothing feeds it. */
    private static String volts(Circuit circuit, int pin) {
        return PowerGraph.of(circuit)
                .volts(pin)
                .map(Volts::nominal)
                .filter(OptionalDouble::isPresent)
                .map(Figures::of)
                .orElse(circuit.wiring().pin(pin).inside().or(""));
    }

    /** Whether a supply contact faces a supply of another voltage at the same place of the other socket. */
    static boolean otherSupply(Circuit circuit, int unit, int plug, int otherUnit, int otherPlug) {
        Wiring wiring = circuit.wiring();
        int here = wiring.firstPin(unit, plug);
        int there = wiring.firstPin(otherUnit, otherPlug);
        int count = Math.min(wiring.endPin(unit, plug) - here, wiring.endPin(otherUnit, otherPlug) - there);
        for (int i = 0; i < count; i++) {
            if (supply(wiring.pin(here + i))
                    && supply(wiring.pin(there + i))
                    && !volts(circuit, here + i).equals(volts(circuit, there + i))) {
                return true;
            }
        }
        return false;
    }

    /** Whether two sockets are on one unit and pin for pin the same points inside it. */
    static boolean same(Wiring wiring, int unit, int plug, int otherUnit, int otherPlug) {
        if (unit != otherUnit) {
            return false;
        }
        TypeLayout layout = wiring.directory().layout(unit);
        int first = layout.firstPin(plug);
        int other = layout.firstPin(otherPlug);
        int count = layout.endPin(plug) - first;
        if (count != layout.endPin(otherPlug) - other) {
            return false;
        }
        for (int i = 0; i < count; i++) {
            int point = layout.pointOf(first + i);
            boolean none = unfitted(layout.pin(first + i)) && unfitted(layout.pin(other + i));
            if (!none && (point < 0 || point != layout.pointOf(other + i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean unfitted(Pin pin) {
        Optional<PinRole> role = pin.role().known();
        return role.isPresent() && role.get() == PinRole.NONE;
    }
}
