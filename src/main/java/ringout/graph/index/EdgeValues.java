package ringout.graph.index;

import java.util.function.IntToDoubleFunction;

/** Guards against numbers a search could not survive; what an unknown length or capacity means is the caller's matter. */
final class EdgeValues {
    private EdgeValues() {}

    static double notNegative(IntToDoubleFunction values, int edge, String what) {
        double value = values.applyAsDouble(edge);
        if (!(value >= 0)) {
            throw new IllegalArgumentException(what + " " + value + " of edge " + edge + " is not a number from 0 up");
        }
        return value;
    }
}
