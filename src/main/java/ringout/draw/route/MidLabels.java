package ringout.draw.route;

import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.form.Lane;
import ringout.draw.form.Link;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;

/**
 * Places for the labels along wires, so that on no wire more than 120 mm lie between two labels (common practice for
 * wiring sheets), as far as there is a free place: a label covers no other wire, label or box.
 */
final class MidLabels {
    private static final double FARTHEST = 120;
    private static final double TRY_EVERY = 2.5;
    private static final double WIRE_CLEARANCE = 0.6;
    private static final double MARGIN = 0.8;
    private static final double HALF_HEIGHT = SMALL / 2 + 0.35;
    private static final double TALL_HALF_HEIGHT = HALF_HEIGHT + 0.8;

    private final Routed routed;
    private final List<Area> fixed = new ArrayList<>();
    private final List<LabelSpot> found = new ArrayList<>();
    private final List<Area> labels = new ArrayList<>();

    private MidLabels(Routed routed) {
        this.routed = routed;
    }

    static List<LabelSpot> find(Routed routed) {
        MidLabels labels = new MidLabels(routed);
        labels.collectObstacles();
        for (RoutedLink way : routed.links()) {
            if (way.link().wire().isPresent() && !way.link().flagged()) {
                labels.label(way);
            }
        }
        return labels.found;
    }

    private void collectObstacles() {
        for (NodeForm node : routed.placed().forms().nodes()) {
            fixed.add(routed.area(node));
        }
        for (Tap tap : routed.placed().forms().taps()) {
            double out = routed.placed().right(tap) ? 1 : -1;
            Point end = routed.end(tap);
            Area node = routed.area(routed.placed().forms().nodes().get(tap.node()));
            double edge = out > 0 ? node.right() : node.x();
            double far = edge + out * tap.lane().width();
            fixed.add(Area.between(edge, end.y() - HALF_HEIGHT, far, end.y() + HALF_HEIGHT));
        }
    }

    private void label(RoutedLink way) {
        String lead = way.link().wire().map(w -> Lettering.printable(w.lead())).orElse("");
        if (lead.isEmpty()) {
            return;
        }
        double width = Math.min(Lettering.width(lead, SMALL, Weight.REGULAR), 24) + 2 * MARGIN;
        Link link = way.link();
        double start = labelled(routed.placed().forms().taps().get(link.from()));
        double end = way.length() - labelled(routed.placed().forms().taps().get(link.to()));
        while (end - start > FARTHEST) {
            double wanted = end - start > 2 * FARTHEST ? start + FARTHEST - 5 : (start + end) / 2;
            Optional<Double> place = nearest(way, width, wanted, start + 10, Math.min(end - 10, start + FARTHEST));
            start = place.orElse(start + FARTHEST);
        }
    }

    /** How far from the end of a wire the middle of its first label is. */
    private double labelled(Tap tap) {
        Lane lane = tap.lane();
        Area node = routed.area(routed.placed().forms().nodes().get(tap.node()));
        double x = routed.end(tap).x();
        double inside = Math.min(Math.abs(x - node.x()), Math.abs(node.right() - x));
        return inside + lane.labelStart() + lane.labelWidth() / 2;
    }

    private Optional<Double> nearest(RoutedLink way, double width, double wanted, double low, double high) {
        for (double d = 0; d <= FARTHEST; d += TRY_EVERY) {
            for (double at : new double[] {wanted - d, wanted + d}) {
                if (at >= low && at <= high && tryAt(way, width, at)) {
                    return Optional.of(at);
                }
            }
        }
        return Optional.empty();
    }

    private boolean tryAt(RoutedLink way, double width, double at) {
        double passed = 0;
        List<Point> points = way.points();
        for (int i = 1; i < points.size(); i++) {
            double length = points.get(i).distance(points.get(i - 1));
            double from = at - passed;
            if (from <= length) {
                boolean inside = from >= width / 2 + 1 && from <= length - width / 2 - 1;
                return inside && tryOn(way, points.get(i - 1), points.get(i), from / length, width);
            }
            passed += length;
        }
        return false;
    }

    private boolean tryOn(RoutedLink way, Point a, Point b, double share, double width) {
        boolean upright = Math.abs(a.x() - b.x()) < 1e-9;
        Point centre = new Point(a.x() + (b.x() - a.x()) * share, a.y() + (b.y() - a.y()) * share);
        double half = isPlain(way) ? HALF_HEIGHT : TALL_HALF_HEIGHT;
        double halfX = upright ? half : width / 2;
        double halfY = upright ? width / 2 : half;
        Area area = new Area(centre.x() - halfX, centre.y() - halfY, 2 * halfX, 2 * halfY);
        boolean free = fixed.stream().noneMatch(area::overlaps)
                && labels.stream().noneMatch(area::overlaps)
                && clearOfWires(area, way.link().index());
        if (free) {
            labels.add(area);
            found.add(new LabelSpot(way.link().index(), centre, upright));
        }
        return free;
    }

    /** Whether the label has neither letters that hang nor marks that rise. */
    private static boolean isPlain(RoutedLink way) {
        String lead = way.link().wire().map(w -> Lettering.printable(w.lead())).orElse("");
        return !Lettering.hangs(lead) && Lettering.riseOf(lead, SMALL) == 0;
    }

    private boolean clearOfWires(Area area, int own) {
        for (RoutedLink other : routed.links()) {
            List<Point> points = other.points();
            for (int i = 1; other.link().index() != own && i < points.size(); i++) {
                Point a = points.get(i - 1);
                Point b = points.get(i);
                if (Area.between(a.x(), a.y(), b.x(), b.y())
                        .grown(WIRE_CLEARANCE)
                        .overlaps(area)) {
                    return false;
                }
            }
        }
        return true;
    }
}
