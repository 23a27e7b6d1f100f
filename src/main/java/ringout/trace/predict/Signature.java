package ringout.trace.predict;

import java.util.Collections;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What one sees of the modules without a tool: who says nothing, who is not steady, who is dark. Units by name.
 *
 * @param silent units that are not heard, or that hear no command, and are else
 * @param erratic units that come and go, or show errors
 * @param dark units without any light
 * @param opened fuses and sources that a short opened
 */
public record Signature(
        SortedSet<String> silent, SortedSet<String> erratic, SortedSet<String> dark, SortedSet<String> opened) {
    /** All as it should be. */
    public static final Signature HEALTHY =
            new Signature(new TreeSet<>(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>());

    /** Keeps its own copies. */
    public Signature {
        silent = Collections.unmodifiableSortedSet(new TreeSet<>(silent));
        erratic = Collections.unmodifiableSortedSet(new TreeSet<>(erratic));
        dark = Collections.unmodifiableSortedSet(new TreeSet<>(dark));
        opened = Collections.unmodifiableSortedSet(new TreeSet<>(opened));
    }

    /** Whether no module shows anything. */
    public boolean latent() {
        return silent.isEmpty() && erratic.isEmpty() && dark.isEmpty();
    }
}
