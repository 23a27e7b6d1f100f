package ringout.present.lines;

import java.util.List;
import ringout.repair.Repair;

/**
 * A repair and the lines of the user's files it changes.
 *
 * @param repair the repair
 * @param lines the lines, empty where the change cannot be shown in the files as they are
 */
public record RepairChange(Repair repair, List<LineChange> lines) {
    /** Keeps its own copy. */
    public RepairChange {
        lines = List.copyOf(lines);
    }
}
