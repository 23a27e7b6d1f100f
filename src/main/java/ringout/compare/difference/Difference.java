package ringout.compare.difference;

import java.util.List;
import java.util.Set;
import ringout.finding.Place;

/**
 * One difference between two aircraft.
 *
 * @param kind what it is
 * @param object what differs, by its name in the base, or in the other aircraft where the base has none
 * @param what object and field in words: {@code LOG CAN2 terminator}
 * @param before what the base says; empty where it says nothing
 * @param after what the other aircraft says; empty where it says nothing
 * @param effects what it does to the nets: opens, joins, leaves as they are
 * @param at rows of the base
 * @param there rows of the other aircraft
 * @param causes the tokens by which findings name it: a lead, UNIT/field
 * @param touched conductors, units and leads it is about
 */
public record Difference(
        Kind kind,
        String object,
        String what,
        String before,
        String after,
        List<String> effects,
        List<Place> at,
        List<Place> there,
        Set<String> causes,
        Touched touched) {
    /** Keeps its own copies. */
    public Difference {
        effects = List.copyOf(effects);
        at = List.copyOf(at);
        there = List.copyOf(there);
        causes = Set.copyOf(causes);
    }

    /** Before and after in one line. */
    public String change() {
        if (before.isEmpty()) {
            return after;
        }
        return after.isEmpty() ? before + " -> nothing" : before + " -> " + after;
    }

    /** The same with its effects on the nets. */
    public Difference with(List<String> nets) {
        return new Difference(kind, object, what, before, after, nets, at, there, causes, touched);
    }
}
