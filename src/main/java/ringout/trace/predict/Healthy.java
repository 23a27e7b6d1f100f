package ringout.trace.predict;

import java.util.List;
import java.util.TreeSet;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Defect;
import ringout.trace.candidate.FaultKind;
import ringout.trace.candidate.Opening;
import ringout.trace.candidate.Repair;

/** Nothing wrong, as a candidate that changes nothing: what every test should show. */
final class Healthy {
    /** A unit that is not aboard is mute: nobody notices. */
    private static final int NOBODY = -1;

    static final Candidate CIRCUIT = new Candidate(
            "healthy",
            FaultKind.DEAD_TRANSCEIVER,
            new Defect.Inside(NOBODY, Defect.Inside.How.MUTE),
            "nothing wrong",
            List.of(),
            new Repair(Repair.Sort.SETTING, "", "nothing to do", 0),
            Opening.NONE,
            0,
            new TreeSet<>(),
            List.of());

    private Healthy() {}
}
