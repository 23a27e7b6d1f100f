package ringout.check.power;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Plug;
import ringout.solve.power.PowerFlow;

/**
 * The contacts of one plug that carry the same rail, 0V or signal, with a conductor each.
 *
 * @param at the aircraft
 * @param pins vertices of the pins, ascending
 * @param rating what one of them carries
 */
record Contact(Situation at, List<Integer> pins, ContactRating rating) {
    /** Calls for the contacts of every plug of a unit aboard that may carry current and are rated at all. */
    static void each(Situation at, Consumer<Contact> action) {
        Wiring wiring = at.wiring();
        for (int unit = 0; unit < at.directory().count(); unit++) {
            if (at.directory().isJoint(unit) || !at.circuit().aboard(unit)) {
                continue;
            }
            int first = wiring.firstPin(unit);
            while (first < wiring.endPin(unit)) {
                int end = wiring.endPin(unit, wiring.plugIndex(first));
                Plug plug = wiring.plug(first);
                if (!plug.contactRatingA().isNotApplicable()) {
                    ContactRating rating = ContactRating.of(plug);
                    groups(at, first, end).forEach(pins -> action.accept(new Contact(at, pins, rating)));
                }
                first = end;
            }
        }
    }

    private static Iterable<List<Integer>> groups(Situation at, int first, int end) {
        Wiring wiring = at.wiring();
        Map<Integer, List<Integer>> groups = new LinkedHashMap<>();
        for (int pin = first; pin < end; pin++) {
            if (wiring.wiresAt(pin).length > 0) {
                int unit = wiring.unitOf(pin);
                int point = wiring.directory().layout(unit).pointOf(wiring.localPin(pin));
                int inside = point < 0 ? pin : wiring.firstPoint(unit) + point;
                groups.computeIfAbsent(inside, key -> new ArrayList<>()).add(pin);
            }
        }
        return groups.values();
    }

    /** The pin with the largest current. */
    int pin(PowerFlow flow) {
        int worst = pins.get(0);
        for (int pin : pins) {
            worst = Math.abs(flow.intoPin(pin)) > Math.abs(flow.intoPin(worst)) ? pin : worst;
        }
        return worst;
    }

    /** The largest current of one of them in A. */
    double worst(PowerFlow flow) {
        return Math.abs(flow.intoPin(pin(flow)));
    }

    /** The conductor at the pin with the largest current. */
    Wire wire(PowerFlow flow) {
        Wiring wiring = at.wiring();
        Wire worst = wiring.wires().get(wiring.wiresAt(pins.get(0))[0]);
        for (int w : wiring.wiresAt(pin(flow))) {
            Wire wire = wiring.wires().get(w);
            worst = Math.abs(flow.amps(wire)) > Math.abs(flow.amps(worst)) ? wire : worst;
        }
        return worst;
    }

    /** The part of its rating one of them may carry. */
    double share() {
        return pins.size() > 1 ? at.limit(Thresholds.CONTACT_SHARE).value() / 100 : 1;
    }

    /** What one of them may carry all day in A. */
    double limitA() {
        return rating.amps() * share();
    }

    /** The plug they sit in. */
    Plug plug() {
        return at.wiring().plug(pins.get(0));
    }

    /** Name of the plug. */
    String plugName() {
        int pin = pins.get(0);
        return at.wiring().plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin));
    }

    /** Adds the numbers of the leads at them, and calls for each. */
    void leads(BitSet to, IntConsumer each) {
        for (int pin : pins) {
            for (int wire : at.wiring().wiresAt(pin)) {
                int lead = at.wiring().wires().get(wire).leadIndex();
                to.set(lead);
                each.accept(lead);
            }
        }
    }
}
