package ringout.draw.route;

import ringout.draw.form.Lattice;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;
import ringout.draw.paper.Point;
import ringout.draw.place.Placed;
import ringout.draw.place.Widths;

/** Where columns, tracks and wire ends lie across the sheet. */
final class Columns {
    private Columns() {}

    static double channelLeft(Widths widths, int channel) {
        double x = 0;
        for (int c = 0; c < channel; c++) {
            x += widths.channel(c) + widths.column(c);
        }
        return x;
    }

    static double left(Widths widths, int column) {
        return channelLeft(widths, column) + widths.channel(column);
    }

    static double track(Widths widths, int channel, int track) {
        return channelLeft(widths, channel) + widths.leftLane(channel) + (track + 1) * Lattice.STEP;
    }

    static Point end(Placed placed, Widths widths, Tap tap) {
        NodeForm node = placed.forms().nodes().get(tap.node());
        int column = placed.column(node);
        double left = left(widths, column);
        double width = widths.column(column);
        double x = node.isSplice() ? left + width / 2 : placed.right(tap) ? left + width : left;
        return new Point(x, Lattice.mm(placed.line(tap)));
    }
}
