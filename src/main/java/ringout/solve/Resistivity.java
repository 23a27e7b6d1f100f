package ringout.solve;

import ringout.graph.Wire;
import ringout.model.Datum;

/** Resistance of conductors and contacts. */
public final class Resistivity {
    /** Standard annealed copper at 20 degC: 1/58 ohm mm2 per m (IEC 60028, from memory). */
    public static final double COPPER_OHM_MM2_PER_M = 1.0 / 58;

    /** One mated signal contact, when nothing is given: 20 milliohm, common practice, no source. */
    public static final double CONTACT_OHM = 0.020;

    private static final double MM_PER_M = 1000;

    private Resistivity() {}

    /** Resistance of a conductor in ohm at 20 degC; without a length or a size it counts as zero. */
    public static double ohm(Wire wire) {
        Datum<Double> area = wire.areaMm2();
        Datum<Double> length = wire.lengthMm();
        return area.isKnown() && length.isKnown() && area.or(0.0) > 0
                ? COPPER_OHM_MM2_PER_M * length.or(0.0) / MM_PER_M / area.or(1.0)
                : 0;
    }
}
