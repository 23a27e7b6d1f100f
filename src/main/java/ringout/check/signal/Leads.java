package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Situation;
import ringout.graph.Trail;
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
