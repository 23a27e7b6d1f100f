package ringout.random;

import java.util.List;
import java.util.Set;

/**
 * A mistake put into an aircraft and what must come of it, told by whoever put it there.
 *
 * @param kind what was done, in words
 * @param edits the change, one edit a line
 * @param codes checks one of which must be the first headline
 * @param names units, leads or buses the headline must name, each by one of the words given
 */
record Fault(String kind, List<String> edits, Set<String> codes, List<Set<String>> names) {
    /** A mistake that one check must name. */
    static Fault of(String kind, String code, List<String> edits) {
        return new Fault(kind, edits, Set.of(code.split(" ")), List.of());
    }

    /** The same, whose headline must name a thing. */
    Fault naming(String... any) {
        List<Set<String>> more = new java.util.ArrayList<>(names);
        more.add(Set.of(any));
        return new Fault(kind, edits, codes, List.copyOf(more));
    }

    @Override
    public String toString() {
        return kind + " " + edits;
    }
}
