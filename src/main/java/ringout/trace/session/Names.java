package ringout.trace.session;

import java.util.Collection;
import java.util.Collections;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;

/** Sets of names in a fixed order. */
final class Names {
    private Names() {}

    static SortedSet<String> copy(Collection<String> names) {
        return Collections.unmodifiableSortedSet(new TreeSet<>(names));
    }

    static SortedSet<String> without(Collection<String> names, Set<String> some, Set<String> others) {
        SortedSet<String> left = new TreeSet<>(names);
        left.removeAll(some);
        left.removeAll(others);
        return Collections.unmodifiableSortedSet(left);
    }
}
