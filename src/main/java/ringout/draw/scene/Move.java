package ringout.draw.scene;

/**
 * An arrow from where a thing is to where it should be.
 *
 * @param id identifier
 * @param from the row where it is
 * @param to the row where it should be
 */
public record Move(String id, String from, String to) {}
