/**
 * The third stage of a drawing: the way of every wire, in millimetres from the upper left corner of the diagram, and the
 * places of the labels along long wires.
 *
 * <p>Wires run level and plumb. Two wires of one direction keep at least one lattice step apart; a wire turns only
 * between the lanes of a channel, so that no wire runs through what stands beside the end of another.
 */
@NullMarked
package ringout.draw.route;

import org.jspecify.annotations.NullMarked;
