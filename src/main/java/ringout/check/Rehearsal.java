package ringout.check;

import java.util.List;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.State;
import ringout.model.edit.Edit;
import ringout.model.edit.Edited;
import ringout.model.edit.Edits;

/** A copy of an aircraft with a change made on it, for checks to look at. The aircraft itself stays as it is. */
public final class Rehearsal {
    private final Wiring wiring;

    private Rehearsal(Aircraft aircraft) {
        this.wiring = Wiring.of(aircraft);
    }

    /** The copy, unless one of the edits cannot be made. */
    public static Optional<Rehearsal> of(Aircraft aircraft, List<Edit> edits) {
        Edited edited = Edits.apply(aircraft, edits);
        return edited.problems().isEmpty() ? Optional.of(new Rehearsal(edited.aircraft())) : Optional.empty();
    }

    /** The copy. */
    public Aircraft aircraft() {
        return wiring.aircraft();
    }

    /**
     * Reviews the copy in every state.
     *
     * @param checks the checks that look
     * @param today day the waivers are held against, YYYY-MM-DD, or {@link Review#NO_DAY}
     */
    public Report review(List<Check> checks, String today) {
        return Review.of(Circuit.all(wiring), checks, today);
    }

    /** The copy in one state. */
    Situation in(State state) {
        return new Situation(Circuit.of(wiring, state));
    }

    /** What one check finds of the copy in one state, before anything is folded. */
    static List<Finding> findings(Check check, Situation at) {
        Outcomes out = new Outcomes(check.getClass(), at.state());
        check.look(at, out);
        return out.findings();
    }
}
