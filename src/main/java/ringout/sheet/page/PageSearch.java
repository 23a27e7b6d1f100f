package ringout.sheet.page;

import java.util.List;

/**
 * The searches for a fault, worked out beforehand.
 *
 * @param state the state they are worked out in
 * @param faults one for each unit that can be silent, in the order of the list
 * @param tests the tests they ask for, by identity, in the order they are first asked for
 */
public record PageSearch(String state, List<PageFault> faults, List<PageTest> tests) {
    /** Keeps its own copies. */
    public PageSearch {
        faults = List.copyOf(faults);
        tests = List.copyOf(tests);
    }
}
