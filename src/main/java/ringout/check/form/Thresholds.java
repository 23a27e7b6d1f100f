package ringout.check.form;

import java.util.List;

/** All limits with their sources, in one place. A project may set others by name, with a reason. */
public final class Thresholds {
    private static final String DRONECAN_8 = "DroneCAN specification, section 8";

    /** Longest stub or overhang of a terminated bus. */
    public static final Threshold BUS_STUB = new Threshold("bus.stub", 300, "mm", DRONECAN_8);

    private Thresholds() {}

    /** All of them. */
    public static List<Threshold> all() {
        return List.of(BUS_STUB);
    }
}
