package ringout.draw.scene;

/**
 * One contact of a plug.
 *
 * @param id identifier, such as {@code FC-CAN1-2}
 * @param number what is printed in the cell at the edge of the box, such as {@code 2}
 * @param signal what is printed beside it, such as {@code CAN H}; may be empty
 * @param presence whether the contact is there
 */
public record Pin(String id, String number, String signal, Presence presence) implements Row {
    /** A contact that is there. */
    public Pin(String id, String number, String signal) {
        this(id, number, signal, Presence.FITTED);
    }
}
