/**
 * How big things are before they have a place: boxes, plugs, badges, and the lane beside each wire end in which its
 * colour, label, badges and flag stand. Positions across the sheet are millimetres; positions down the sheet are whole
 * steps of {@link ringout.draw.form.Lattice#STEP}, so that two wires are either on one height or far enough apart.
 */
@NullMarked
package ringout.draw.form;

import org.jspecify.annotations.NullMarked;
