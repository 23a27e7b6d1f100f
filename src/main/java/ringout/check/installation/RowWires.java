package ringout.check.installation;

import java.util.List;
import ringout.check.form.Situation;
import ringout.graph.Wire;

/** The conductors of one row of the list: all conductors stand in the order of the rows, so they are found by halving. */
final class RowWires {
    private RowWires() {}

    /** The conductors of a row, by its number. */
    static List<Wire> of(Situation at, int row) {
        List<Wire> wires = at.wiring().wires();
        return wires.subList(first(wires, row), first(wires, row + 1));
    }

    /** The first conductor of this row or a later one. */
    private static int first(List<Wire> wires, int row) {
        int low = 0;
        int high = wires.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (wires.get(middle).leadIndex() < row) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
