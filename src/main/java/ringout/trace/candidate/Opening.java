package ringout.trace.candidate;

import java.util.List;
import java.util.OptionalDouble;

/**
 * What has to come off to get at a place.
 *
 * @param covers names of the lids, the outermost first; empty when the place is open to the hand
 * @param minutes time to take them off and put them on again; empty when the list does not tell it
 */
public record Opening(List<String> covers, OptionalDouble minutes) {
    /** Nothing to open. */
    public static final Opening NONE = new Opening(List.of(), OptionalDouble.of(0));

    /** Keeps its own copy. */
    public Opening {
        covers = List.copyOf(covers);
    }

    /** Whether nothing has to come off. */
    public boolean free() {
        return covers.isEmpty();
    }
}
