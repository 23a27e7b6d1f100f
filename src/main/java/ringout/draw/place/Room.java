package ringout.draw.place;

/**
 * The room on the sheet that the diagram should not exceed.
 *
 * @param width mm
 * @param height steps of the lattice
 */
public record Room(double width, int height) {}
