/**
 * The second stage of a drawing: which column each box stands in, which side each plug looks to, the order in a column,
 * and every height.
 *
 * <p>Boxes stand in columns with a channel on either side of each. A wire leaves its pin into the channel beside it; if
 * its other end lies in another channel, it passes straight through the columns between, as a <em>pass</em>. Columns and
 * sides are chosen so that few wires need a pass; then boxes, passes and plugs are moved one at a time as long as the
 * picture gains: fewer crossings, turns and overlaps, shorter wires, and no larger than the room on the sheet.
 *
 * <p>Deterministic: no clock, no chance; of two equal choices the one nearer to the order of the scene is taken.
 */
@NullMarked
package ringout.draw.place;

import org.jspecify.annotations.NullMarked;
