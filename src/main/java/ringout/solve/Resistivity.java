package ringout.solve;

import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Plug;

/** Resistance of conductors and contacts. */
public final class Resistivity {
    /** Standard annealed copper at 20 degC: 1/58 ohm mm2 per m (IEC 60028, from memory). */
    public static final double COPPER_OHM_MM2_PER_M = 1.0 / 58;

    /** Rise of the resistance of copper per degC above 20 (IEC 60028, from memory). */
    public static final double COPPER_PER_DEGREE = 0.00393;

    /** The temperature tables of resistance are made for, degC. */
    public static final double REFERENCE_C = 20;

    /** One mated signal contact, when nothing is given: 20 milliohm, common practice, no source. */
    public static final double CONTACT_OHM = 0.020;

    /** One mated contact made for 5 A and more, when nothing is given: 3 milliohm, common practice, no source. */
    public static final double POWER_CONTACT_OHM = 0.003;

    private static final double POWER_CONTACT_A = 5;
    private static final double MM_PER_M = 1000;
    private static final double MILLI = 0.001;

    private Resistivity() {}

    /** Resistance of a conductor in ohm at 20 degC; without a length or a size it counts as zero. */
    public static double ohm(Wire wire) {
        return isKnown(wire)
                ? COPPER_OHM_MM2_PER_M
                        * wire.lengthMm().or(0.0)
                        / MM_PER_M
                        / wire.areaMm2().or(1.0)
                : 0;
    }

    /** Resistance of a conductor in ohm at a temperature of the copper in degC. */
    public static double ohm(Wire wire, double celsius) {
        return ohm(wire) * (1 + COPPER_PER_DEGREE * (celsius - REFERENCE_C));
    }

    /** Whether length and size of a conductor are given. */
    public static boolean isKnown(Wire wire) {
        return wire.lengthMm().isKnown()
                && wire.areaMm2().isKnown()
                && wire.areaMm2().or(0.0) > 0;
    }

    /** Resistance in ohm from a conductor to a pin or joint; a joint that gives none counts as zero. */
    public static double contactOhm(Wiring wiring, int pin) {
        int unit = wiring.unitOf(pin);
        if (wiring.directory().isJoint(unit)) {
            return wiring.directory().joint(unit).milliohm().or(0.0) * MILLI / 2;
        }
        Plug plug = wiring.plug(pin);
        double usual = plug.contactRatingA().or(0.0) >= POWER_CONTACT_A ? POWER_CONTACT_OHM : CONTACT_OHM;
        return plug.contactMilliohm().known().map(m -> m * MILLI).orElse(usual);
    }

    /** Whether the resistance of the contact at a pin is given, or there is none. */
    public static boolean contactKnown(Wiring wiring, int pin) {
        Datum<Double> given = wiring.directory().isJoint(wiring.unitOf(pin))
                ? wiring.directory().joint(wiring.unitOf(pin)).milliohm()
                : wiring.plug(pin).contactMilliohm();
        return !given.isMissing();
    }
}
