package ringout.draw.scene;

/**
 * A joint in the trunk from which a stub hangs.
 *
 * @param id identifier
 */
public record BusTee(String id) implements BusPoint {}
