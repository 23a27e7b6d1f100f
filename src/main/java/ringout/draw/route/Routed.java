package ringout.draw.route;

import java.util.List;
import ringout.draw.form.Lattice;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.place.Placed;
import ringout.draw.place.Widths;

/**
 * A placed scene whose every wire has its way; only {@link Router} makes one. Millimetres from the upper left corner of
 * the diagram.
 */
public final class Routed {
    private final Placed placed;
    private final Widths widths;
    private final List<RoutedLink> links;
    private final List<LabelSpot> labels;

    Routed(Placed placed, Widths widths, List<RoutedLink> links, List<LabelSpot> labels) {
        this.placed = placed;
        this.widths = widths;
        this.links = List.copyOf(links);
        this.labels = List.copyOf(labels);
    }

    /** {@return the stage before} */
    public Placed placed() {
        return placed;
    }

    /** {@return every wire and move, in the order of the scene} */
    public List<RoutedLink> links() {
        return links;
    }

    /** {@return the labels along long wires} */
    public List<LabelSpot> labels() {
        return labels;
    }

    /** {@return the area of a box, or of a splice with its label} */
    public Area area(NodeForm node) {
        int column = placed.column(node);
        double left = Columns.left(widths, column);
        return new Area(left, Lattice.mm(placed.top(node)), widths.column(column), Lattice.mm(placed.height(node)));
    }

    /** {@return where a wire ends at a box or splice} */
    public Point end(Tap tap) {
        return Columns.end(placed, widths, tap);
    }

    /** {@return the width over all, mm} */
    public double width() {
        return widths.total();
    }

    /** {@return the height over all, mm} */
    public double height() {
        return Lattice.mm(placed.height());
    }
}
