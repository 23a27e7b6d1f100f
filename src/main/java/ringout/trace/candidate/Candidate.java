package ringout.trace.candidate;

import java.util.List;
import java.util.SortedSet;
import ringout.solve.meter.Change;

/**
 * One fault at one place, as an edit of the typed graph.
 *
 * @param id stable identity: kind and place, independent of the order of rows
 * @param kind what kind it is
 * @param defect what is wrong, in the graph
 * @param title what a technician calls it: "W68 pair open"
 * @param rows ids of the rows concerned, in the order of the list
 * @param repair what one does about it
 * @param opening what has to come off for that
 * @param weight how likely before anything is known, relative to the others; not normalised
 * @param because circumstances that raised the weight
 * @param changes what it does to what conducts, by number of element or edge; empty when it changes nothing there
 */
public record Candidate(
        String id,
        FaultKind kind,
        Defect defect,
        String title,
        List<String> rows,
        Repair repair,
        Opening opening,
        double weight,
        SortedSet<Circumstance> because,
        List<Change> changes) {
    /** Keeps its own copies. */
    public Candidate {
        rows = List.copyOf(rows);
        changes = List.copyOf(changes);
        because = java.util.Collections.unmodifiableSortedSet(new java.util.TreeSet<>(because));
    }

    // Its identity says which it is.
    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof Candidate that && id.equals(that.id));
    }

    @Override
    public int hashCode() {
        return id.hashCode();
    }

    @Override
    public String toString() {
        return title;
    }
}
