/**
 * Proves a finished sheet from its SVG text alone: what the layout believed does not count.
 *
 * <p>A sheet with a problem is not written. Checked: every promised wire is there once, with both ends at the right pins;
 * no two wires on or too near each other; no wire through a unit, no unit on another; no text on text, on a wire of
 * another or below other ink; lettering of at least 2.5 mm, and of 5 mm where it is read at arm's length;
 * every promised thing there once; nothing outside the frame; contrast by the formula of WCAG 2;
 * no dot that joins four lines. Counted: crossings, bends, and the longest piece of wire without a label.
 *
 * <p>Not checked: whether the scene says what the aircraft is.
 */
@NullMarked
package ringout.draw.verify;

import org.jspecify.annotations.NullMarked;
