/**
 * What a sheet is to show, before anything has a place: the first of the four stages of a drawing.
 *
 * <p>{@link ringout.draw.scene.WiringScene} is a pin-to-pin wiring diagram: boxes with plugs and pins, wires between
 * them, splices, ends on other sheets, and the marks of findings. Everything has an identifier of its own; wires, marks
 * and moves name what they belong to by it. A scene is built with {@link ringout.draw.scene.WiringScene#builder} and is
 * whole: a wire to a pin that the scene lacks is refused at once.
 *
 * <p>Nothing here knows the aircraft. Order matters and is kept: pins in plug order, and of two equally good pictures the
 * one that keeps the order of the scene is drawn.
 */
@NullMarked
package ringout.draw.scene;

import org.jspecify.annotations.NullMarked;
