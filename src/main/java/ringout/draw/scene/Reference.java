package ringout.draw.scene;

/**
 * The end of a wire that goes on elsewhere: a flag that names the far end.
 *
 * @param id identifier, used as an end of exactly one wire
 * @param text what the flag says, such as {@code GMC-C1-2 sheet 3 B4}
 */
public record Reference(String id, String text) {}
