package ringout.check.power;

import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.model.Airframe;
import ringout.solve.power.Endurance;

/**
 * What a mission leaves of the endurance, and what it should leave.
 *
 * @param endurance how long the packs last
 * @param missionMin planned mission in min
 * @param askedMin reserve the list asks for in min; not a number when it asks for none
 * @param share part of the endurance that must be left where the list asks for nothing
 * @param leastMin least reserve in min where the list asks for nothing
 */
record Reserve(Endurance endurance, double missionMin, double askedMin, Threshold share, Threshold leastMin) {
    private static final double WARM_C = 20;
    private static final double PER_DEGREE = 0.01;

    static Reserve of(Situation at, Endurance endurance) {
        Airframe airframe = at.aircraft().airframe();
        return new Reserve(
                endurance,
                airframe.missionMin().or(0.0),
                airframe.missionReserveMin().or(Double.NaN),
                at.limit(Thresholds.RESERVE_SHARE),
                at.limit(Thresholds.RESERVE_TIME));
    }

    /** The part of the capacity that is left at the lowest temperature of the packs. */
    static double cold(Situation at) {
        double coldest = at.aircraft().airframe().coldestC().or(WARM_C);
        return Math.max(0, 1 - PER_DEGREE * Math.max(0, WARM_C - coldest));
    }

    /** Whether the list asks for a reserve of its own. */
    boolean isAsked() {
        return !Double.isNaN(askedMin);
    }

    /** The reserve that must be left in min, of an endurance. */
    double needs(double minutes) {
        return isAsked() ? askedMin : Math.max(minutes * share.value() / 100, leastMin.value());
    }

    /** What the mission leaves in min, of an endurance. */
    double left(double minutes) {
        return minutes - missionMin;
    }

    /** Whether the reserve is too short when the endurance is so many times as long. */
    boolean isShort(double factor) {
        double minutes = endurance.minutes() * factor;
        return left(minutes) < needs(minutes) - 1e-9;
    }
}
