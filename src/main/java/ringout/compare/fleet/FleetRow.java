package ringout.compare.fleet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ringout.compare.difference.Fate;
import ringout.finding.Severity;

/**
 * One row of the table of all tails.
 *
 * @param severity the worst of all tails
 * @param what what differs, in words
 * @param base what the base says
 * @param cells one a tail: what it says; empty where it says what the base says
 * @param finding the finding that comes with it, if one does
 * @param fate what is usually decided
 * @param undocumented number of tails that differ without a change on record
 * @param trend number of the trend it shows, in the order of the fleet; nothing for a difference
 */
public record FleetRow(
        Severity severity,
        String what,
        String base,
        List<String> cells,
        Optional<String> finding,
        Fate fate,
        int undocumented,
        OptionalInt trend) {
    /** Keeps its own copy. */
    public FleetRow {
        cells = List.copyOf(cells);
    }

    /** Number of tails that differ. */
    public int tails() {
        return (int) cells.stream().filter(cell -> !cell.isEmpty()).count();
    }

    /** Whether every tail differs from the base: then it may be the base that is to be changed. */
    public boolean everywhere() {
        return tails() == cells.size() && cells.size() > 1;
    }
}
