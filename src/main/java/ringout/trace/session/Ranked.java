package ringout.trace.session;

import java.util.List;
import java.util.Set;
import ringout.trace.candidate.Candidate;

/**
 * A fault that may be present, as a report tells it.
 *
 * @param candidate the fault
 * @param share chance that it is the one, 0 to 1
 * @param alsoSilent units it would silence too, of which nothing is told yet
 * @param alsoUnsteady units it would let come and go, of which nothing is told yet
 * @param misfits readings it fails to explain
 */
public record Ranked(
        Candidate candidate,
        double share,
        Set<String> alsoSilent,
        Set<String> alsoUnsteady,
        List<TestReading> misfits) {
    /** Keeps its own copies, units in the order of their names. */
    public Ranked {
        alsoSilent = Names.copy(alsoSilent);
        alsoUnsteady = Names.copy(alsoUnsteady);
        misfits = List.copyOf(misfits);
    }
}
