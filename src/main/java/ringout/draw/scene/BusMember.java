package ringout.draw.scene;

/**
 * A unit on a bus.
 *
 * @param id identifier, such as {@code GMC}
 * @param title printed large
 * @param subtitle what it is; may be empty
 * @param address as printed, such as {@code 33}; may be empty
 * @param terminator its resistor
 * @param terminatorWords what is said of it, such as {@code fixed} or {@code off}; may be empty
 * @param presence whether the unit is there
 */
public record BusMember(
        String id,
        String title,
        String subtitle,
        String address,
        Terminator terminator,
        String terminatorWords,
        Presence presence)
        implements BusPoint {
    /** A unit that is there. */
    public BusMember(
            String id, String title, String subtitle, String address, Terminator terminator, String terminatorWords) {
        this(id, title, subtitle, address, terminator, terminatorWords, Presence.FITTED);
    }

    /** {@return the identifier by which marks and moves name its resistor} */
    public String terminatorId() {
        return id + "-R";
    }
}
