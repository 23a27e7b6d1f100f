package ringout.plan.late;

import java.util.Locale;
import ringout.check.form.Situation;
import ringout.model.Datum;
import ringout.plan.task.HiddenJoint;

/**
 * How likely one end of a lead is wrong on a first build: wrong port, not latched, loose, wrong pin. Judgement, no data; to
 * be replaced by what an operator's own log says.
 */
public enum JointRisk {
    /** Under a screw. */
    SCREWED(0.010),
    /** In a plug whose shroud or latch keeps it from going in wrong. */
    SHROUDED(0.005),
    /** On an open row of pins, where it can be shifted or reversed. */
    OPEN_ROW(0.020),
    /** In a plug nothing is told of. */
    UNTOLD(0.010);

    private final double wrong;

    JointRisk(double wrong) {
        this.wrong = wrong;
    }

    /** {@return the probability that one end is wrong, 0 to 1} */
    public double wrong() {
        return wrong;
    }

    /** {@return the kind in words} */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** {@return the kind of a joint under a lid} */
    public static JointRisk of(Situation at, HiddenJoint joint) {
        if (joint.screwed()) {
            return SCREWED;
        }
        Datum<Boolean> shrouded = at.directory().isJoint(joint.spot().unit())
                ? Datum.unknown()
                : at.directory()
                        .type(joint.spot().unit())
                        .plugs()
                        .get(joint.spot().plug())
                        .shrouded();
        if (!shrouded.isKnown()) {
            return UNTOLD;
        }
        return shrouded.is(true) ? SHROUDED : OPEN_ROW;
    }
}
