package ringout.compare.judge;

import java.util.List;
import java.util.Optional;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Fate;
import ringout.finding.Finding;
import ringout.finding.Severity;

/**
 * A difference and what it means.
 *
 * @param difference the difference
 * @param severity of the worst finding that comes with it; else the consequence of its kind
 * @param appear findings that the other aircraft has and the base has not, the worst first
 * @param vanish findings that only the base has
 * @param fate what is usually decided about it
 * @param change the change on record that names it, if there is one
 * @param retests what must be tested again
 * @param lapsing signatures that no longer hold
 */
public record Judged(
        Difference difference,
        Severity severity,
        List<Finding> appear,
        List<Finding> vanish,
        Fate fate,
        Optional<String> change,
        List<Retest> retests,
        List<String> lapsing) {
    /** Keeps its own copies. */
    public Judged {
        appear = List.copyOf(appear);
        vanish = List.copyOf(vanish);
        retests = List.copyOf(retests);
        lapsing = List.copyOf(lapsing);
    }

    /** Whether it is of the record only, and raises nothing. */
    public boolean ofRecord() {
        return difference.kind().ofRecord() && !severity.atLeast(Severity.S4);
    }

    /** Whether the aircraft must not be powered or flown so. */
    public boolean dangerous() {
        return severity.atLeast(Severity.S2);
    }
}
