package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import ringout.check.form.Situation;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;

/**
 * A plug of a unit aboard at which a conductor ends.
 *
 * @param unit number of the unit
 * @param index number of the plug in its type
 * @param plug the plug
 */
record PlugInUse(int unit, int index, Plug plug) {
    /** All plugs in use of units whose type is known, in the order of the units. */
    static List<PlugInUse> all(Situation at) {
        List<PlugInUse> all = new ArrayList<>();
        Wiring wiring = at.wiring();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            if (at.directory().typeKnown(unit)) {
                List<Plug> plugs = at.directory().type(unit).plugs();
                for (int plug = 0; plug < plugs.size(); plug++) {
                    if (used(wiring, unit, plug)) {
                        all.add(new PlugInUse(unit, plug, plugs.get(plug)));
                    }
                }
            }
        }
        return all;
    }

    private static boolean used(Wiring wiring, int unit, int plug) {
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            if (wiring.wiresAt(pin).length > 0) {
                return true;
            }
        }
        return false;
    }

    /** UNIT-PLUG. */
    String name(Situation at) {
        return at.wiring().plugName(unit, index);
    }

    /** Numbers of contacts without a conductor that are neither spare nor of the kind none. */
    List<String> open(Situation at) {
        return unused(at, pin -> !pin.spare().is(true) && !(pin.spare() instanceof Datum.Unknown));
    }

    /** Numbers of contacts without a conductor of which it is marked not known whether they are spare. */
    List<String> doubtful(Situation at) {
        return unused(at, pin -> pin.spare() instanceof Datum.Unknown);
    }

    private List<String> unused(Situation at, Predicate<Pin> which) {
        Wiring wiring = at.wiring();
        List<String> numbers = new ArrayList<>(0);
        for (int pin = wiring.firstPin(unit, index); pin < wiring.endPin(unit, index); pin++) {
            if (wiring.wiresAt(pin).length == 0 && !wiring.is(pin, PinRole.NONE) && which.test(wiring.pin(pin))) {
                numbers.add(wiring.pin(pin).number());
            }
        }
        return numbers;
    }
}
