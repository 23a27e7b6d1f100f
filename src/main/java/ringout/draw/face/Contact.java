package ringout.draw.face;

/**
 * A contact of a plug.
 *
 * @param number number or letter of the position
 * @param colour letters of the wire in it; empty when there is none or it has no colour told
 * @param wired whether a wire goes into it
 */
public record Contact(String number, String colour, boolean wired) {}
