package ringout.graph.power;

import java.util.List;
import java.util.Optional;
import ringout.model.Rail;

/**
 * A rail of a unit that takes power from outside or draws some: its supply point and the 0V that goes with it.
 *
 * @param index number among all consumers
 * @param unit number of the unit
 * @param rail name of the rail inside, or of the pin that stands alone
 * @param limits what the type says of the rail
 * @param plus vertex of the supply point
 * @param zero vertex of its 0V; -1 when the type names none
 * @param frameReturn the type says that the rail has no 0V pin: it returns through the frame
 * @param inputs pins it takes power by: supply in, supply through
 * @param draws takes power for itself: has a supply input that feeds nothing else inside
 * @param loads what it draws; empty for a board and for the input of a regulator
 */
public record Consumer(
        int index,
        int unit,
        String rail,
        Optional<Rail> limits,
        int plus,
        int zero,
        boolean frameReturn,
        List<Integer> inputs,
        boolean draws,
        List<Load> loads) {
    // Its number says which consumer of the aircraft it is.
    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof Consumer that
                        && index == that.index
                        && plus == that.plus
                        && rail.equals(that.rail));
    }

    @Override
    public int hashCode() {
        return index;
    }
}
