package ringout.check.form;

import java.util.function.DoubleUnaryOperator;
import ringout.model.Datum;
import ringout.model.Origin;

/** Whether a verdict hangs on a value nobody has measured or read: it turns when an assumed input moves by 20 %. */
public final class Assumed {
    /** How far an assumed input is moved either way: 20 %. */
    public static final double MOVE = 0.2;

    private Assumed() {}

    /**
     * Whether "above the limit" turns when an input, if it is assumed, moves by 20 % either way.
     *
     * @param input the input
     * @param above how far the judged value lies above its limit, as a function of the factor on the input; the verdict is its sign
     */
    public static boolean turns(Datum<?> input, DoubleUnaryOperator above) {
        if (!input.isKnown() || input.source() != Origin.ASSUMED) {
            return false;
        }
        boolean now = above.applyAsDouble(1) > 0;
        return now != above.applyAsDouble(1 - MOVE) > 0 || now != above.applyAsDouble(1 + MOVE) > 0;
    }
}
