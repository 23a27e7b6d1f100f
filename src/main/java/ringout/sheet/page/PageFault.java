package ringout.sheet.page;

import java.util.List;
import java.util.Optional;
import ringout.trace.session.DialogueTree;

/**
 * The search for the fault when one unit is silent and all others respond.
 *
 * @param unit the silent unit
 * @param behind units commanded through it, that cannot be heard meanwhile
 * @param ways what it hangs on: pins, leads and parts in order, each in words
 * @param tree what may be wrong and what to do, for every outcome; empty where no fault of the model silences it alone
 */
public record PageFault(String unit, List<String> behind, List<String> ways, Optional<DialogueTree> tree) {
    /** Keeps its own copies. */
    public PageFault {
        behind = List.copyOf(behind);
        ways = List.copyOf(ways);
    }
}
