package ringout.draw.route;

import ringout.draw.paper.Point;

/**
 * A place for the label of a wire between its ends.
 *
 * @param link number of the wire
 * @param centre middle of the label
 * @param upright whether it stands on a plumb piece and is read from the right
 */
public record LabelSpot(int link, Point centre, boolean upright) {}
