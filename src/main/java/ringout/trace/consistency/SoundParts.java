package ringout.trace.consistency;

import java.util.BitSet;
import java.util.Optional;

/** What can be said of a set of parts while all but the faulty ones are sound. */
public interface SoundParts {
    /** Whether what was seen is possible when exactly these parts are faulty. */
    boolean isConsistent(BitSet faulty);

    /** What a point must then show, empty when it may show anything. */
    Optional<String> predicts(BitSet faulty, String point);
}
