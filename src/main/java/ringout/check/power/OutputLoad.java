package ringout.check.power;

import ringout.finding.Severity;
import ringout.graph.power.PowerSource;

/**
 * What an output has to give, held against its ratings.
 *
 * @param source the output
 * @param flow what flows with all loads at their average
 * @param highest the case of peaks in which it gives most
 * @param average average over the continuous rating
 * @param share average over the part of it that should be used
 * @param peak peak over the peak rating
 */
record OutputLoad(PowerSource source, Flowing flow, Peak highest, Verdict average, Verdict share, Verdict peak) {
    /**
     * What flows when loads peak.
     *
     * @param of which loads
     * @param flow what flows
     */
    record Peak(PeakCase of, Flowing flow) {}

    /** Whether a rating is exceeded, or nearly. */
    boolean isBad() {
        return average.exceeds() || peak.exceeds() || share.exceeds();
    }

    /** Whether a move of an assumed input by 20 % would make a good output bad. */
    boolean turns() {
        return share.turns() || peak.turns();
    }

    /** Whether the peak is what it is blamed for: exceeded, and by more than the average is. */
    boolean blamesPeak() {
        return peak.exceeds() && (!average.exceeds() || peak.use() >= average.use());
    }

    /** The verdict it is blamed for. */
    Verdict blamed() {
        if (blamesPeak()) {
            return peak;
        }
        return average.exceeds() ? average : share;
    }

    /** S2 when a rating is exceeded, S3 when it is only near. */
    Severity severity() {
        return average.exceeds() || peak.exceeds() ? Severity.S2 : Severity.S3;
    }
}
