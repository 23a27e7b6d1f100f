package ringout.check.form;

import java.util.List;

/** All limits with their sources, in one place. A project may set others by name, with a reason. */
public final class Thresholds {
    private static final String DRONECAN_8 = "DroneCAN specification, section 8";

    /** Longest stub or overhang of a terminated bus. */
    public static final Threshold BUS_STUB = new Threshold("bus.stub", 300, "mm", DRONECAN_8);

    /** Longest signal lead that may run without its return. */
    public static final Threshold SIGNAL_RETURN =
            new Threshold("signal.return", 300, "mm", "common practice, no source");

    private Thresholds() {}

    /** All of them. */
    public static List<Threshold> all() {
        return List.of(BUS_STUB, SIGNAL_RETURN);
    }
}
