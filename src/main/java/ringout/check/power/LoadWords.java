package ringout.check.power;

import java.util.OptionalDouble;
import ringout.check.form.Figures;
import ringout.graph.power.Load;

/** How the average of a load comes about, in words. */
final class LoadWords {
    private LoadWords() {}

    /** {@code 270.3 W at 44.4 V}; empty for a plain current. */
    static String of(Load load, OptionalDouble volts) {
        return load.averageA().isKnown() || !load.averageW().isKnown() || volts.isEmpty()
                ? ""
                : ringout.model.shape.Scalars.number(load.averageW().or(0.0)) + " W at " + Figures.of(volts) + " V";
    }
}
