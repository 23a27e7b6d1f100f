package ringout.check.form;

import java.util.List;
import java.util.Optional;
import ringout.finding.Finding;
import ringout.model.edit.Edit;

/** Tries a change on a copy of the list. */
public interface Trials {
    /**
     * What a change leads to.
     *
     * @param worst the worst that the other checks find of the copy and did not find before; nothing when it does no harm
     */
    record Harm(Optional<Finding> worst) {}

    /** Whether there is no sense in trying: the list has findings of S1 as it is, which every copy would have too. */
    boolean spoilt();

    /**
     * Tries edits.
     *
     * @param edits made together on the copy
     * @param currents whether the checks that solve for currents look too
     * @return what comes of them, or nothing when the work set aside for trying is used up or the edits cannot be made
     */
    Optional<Harm> of(List<Edit> edits, boolean currents);
}
