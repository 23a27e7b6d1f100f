package ringout.check.form;

import java.util.List;

/** The limits of build order and records with their sources. */
public final class RecordThresholds {
    /** Current from which a screw joint under a lid needs a witness. */
    public static final Threshold JOINT_WITNESS = new Threshold("joint.witness", 10, "A", "common practice, no source");

    /** Time to open a lid again from which a joint under it wants a test point outside. */
    public static final Threshold LID_COSTLY = new Threshold("lid.costly", 20, "min", "judgement");

    /** What leads of a meter that is not zeroed add to a reading. */
    public static final Threshold METER_LEADS = new Threshold("meter.leads", 0.3, "ohm", "common practice, no source");

    /** Resistance from which a reading counts as over range. */
    public static final Threshold METER_OPEN =
            new Threshold("meter.open", 1_000_000, "ohm", "common practice, no source");

    private RecordThresholds() {}

    /** All of them. */
    static List<Threshold> all() {
        return List.of(JOINT_WITNESS, LID_COSTLY, METER_LEADS, METER_OPEN);
    }
}
