package ringout.draw.scene;

/**
 * A point where wires are joined outside a box: a bar with a dot at each wire, so that no dot joins four lines. At
 * least one wire ends at it.
 *
 * @param id identifier, such as {@code SPL1}
 * @param label what is printed above it; may be empty
 */
public record Splice(String id, String label) {}
