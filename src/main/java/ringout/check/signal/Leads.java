package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.graph.Trail;
import ringout.graph.signal.NetRoles;
import ringout.model.Lead;

/**
 * The leads a way passes.
 */
final class Leads {
    private Leads() {}

    /** The leads in the order of the way, each once. */
    static List<Lead> along(Situation at, Trail way) {
        List<Lead> found = new ArrayList<>();
        for (Trail.Step step : way.steps()) {
            if (step.kind() == Trail.Kind.LEAD) {
                at.aircraft().leads().stream()
                        .filter(lead -> lead.id().equals(step.name()) && !found.contains(lead))
                        .findFirst()
                        .ifPresent(found::add);
            }
        }
        return found;
    }

    /** Says that nothing can be told of a net while the role of a pin on it is not known; true when there is such a pin. */
    static boolean unknown(Situation at, Outcomes out, NetRoles roles, int net) {
        List<Integer> pins = roles.unknownPins(net);
        for (int pin : pins) {
            String name = at.wiring().name(pin);
            out.cannotTell("role of pin " + name, "look it up in the maker's pin-out", 5, name);
        }
        return !pins.isEmpty();
    }

    /** Whether a conductor is mated at a pin. */
    static boolean wired(Situation at, int pin) {
        for (int w : at.wiring().wiresAt(pin)) {
            if (at.circuit().mated(at.wiring().wires().get(w))) {
                return true;
            }
        }
        return false;
    }
}
