package ringout.sheet.harness;

import java.util.List;
import ringout.graph.Wire;

/**
 * What conductors and joints make one point while every unit is unplugged.
 *
 * @param pins its contacts at units, in the order the list reaches them
 * @param lines the fewest measurements that prove it whole: one less than contacts
 * @param loops conductors that lie beside others: an open one among them is not seen from the ends
 */
public record HarnessNet(List<Integer> pins, List<Continuity> lines, List<Wire> loops) {
    /** Keeps its own copies. */
    public HarnessNet {
        pins = List.copyOf(pins);
        lines = List.copyOf(lines);
        loops = List.copyOf(loops);
    }
}
