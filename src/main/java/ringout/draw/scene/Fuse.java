package ringout.draw.scene;

/**
 * The fuse in a conductor.
 *
 * @param rating as printed, such as {@code 5 A}
 * @param atStart whether it sits at the end the wire starts from
 */
public record Fuse(String rating, boolean atStart) {}
