package ringout.check.topology;

import ringout.check.form.Situation;
import ringout.model.State;

/**
 * Tells states in which something is taken off on purpose. What a bus looks like then is T17's matter, as long as another
 * declared state shows the whole aircraft.
 */
final class Removals {
    private Removals() {}

    /** Whether a unit is off or a plug is pulled in a state. */
    static boolean in(State state) {
        return !state.absent().isEmpty() || !state.pulled().isEmpty();
    }

    /** Whether something is off in this state while another declared state is whole. */
    static boolean judgedElsewhere(Situation at) {
        return in(at.circuit().state()) && at.aircraft().states().stream().anyMatch(state -> !in(state));
    }
}
