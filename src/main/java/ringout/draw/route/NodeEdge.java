package ringout.draw.route;

import ringout.draw.form.Tap;
import ringout.draw.place.Placed;
import ringout.draw.place.Widths;

/** The edge of a column at which the lane of a wire end begins; at a splice the wire goes on inwards to the bar. */
record NodeEdge(double x) {
    static NodeEdge of(Placed placed, Widths widths, Tap tap) {
        int column = placed.column(placed.forms().nodes().get(tap.node()));
        double left = Columns.left(widths, column);
        return new NodeEdge(placed.right(tap) ? left + widths.column(column) : left);
    }
}
