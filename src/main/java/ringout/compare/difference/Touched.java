package ringout.compare.difference;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Wire;

/**
 * What a difference touches.
 *
 * @param before conductors of the base
 * @param after conductors of the other aircraft
 * @param units units of the base, by name
 * @param unitsThere units of the other aircraft, by name
 * @param leads leads of the base, by name
 * @param leadsThere leads of the other aircraft, by name
 */
public record Touched(
        List<Wire> before,
        List<Wire> after,
        Set<String> units,
        Set<String> unitsThere,
        Set<String> leads,
        Set<String> leadsThere) {
    /** Nothing. */
    public static final Touched NOTHING = new Touched(List.of(), List.of(), Set.of(), Set.of(), Set.of(), Set.of());

    /** Keeps its own copies. */
    public Touched {
        before = List.copyOf(before);
        after = List.copyOf(after);
    }

    /** A unit that is in both. */
    public static Touched units(String unit, String there) {
        return new Touched(List.of(), List.of(), Set.of(unit), Set.of(there), Set.of(), Set.of());
    }

    /** Both together. */
    public Touched with(Touched more) {
        return new Touched(
                joined(before, more.before),
                joined(after, more.after),
                joined(units, more.units),
                joined(unitsThere, more.unitsThere),
                joined(leads, more.leads),
                joined(leadsThere, more.leadsThere));
    }

    private static List<Wire> joined(List<Wire> first, List<Wire> more) {
        List<Wire> all = new java.util.ArrayList<>(first);
        all.addAll(more);
        return all;
    }

    private static Set<String> joined(Set<String> first, Set<String> more) {
        Set<String> all = new TreeSet<>(first);
        all.addAll(more);
        return all;
    }
}
