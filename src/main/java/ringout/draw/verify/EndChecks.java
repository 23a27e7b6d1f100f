package ringout.draw.verify;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.verify.Flaw.Kind;
import ringout.draw.verify.Seen.Line;
import ringout.draw.verify.Seen.Patch;
import ringout.draw.verify.Seen.Way;

/** Every promised wire once, both ends where they belong, and no dot of four. */
final class EndChecks {
    private static final double REACH = 0.5;

    private final Seen seen;
    private final List<Flaw> flaws;
    private final Map<String, Patch> cells;
    private final Map<String, Patch> flags;
    private final Map<String, Line> bars = new HashMap<>();

    EndChecks(Seen seen, List<Flaw> flaws) {
        this.seen = seen;
        this.flaws = flaws;
        this.cells = seen.outlines("cell", "pin");
        this.flags = seen.outlines("body", "reference");
        for (Line line : seen.lines) {
            if (line.group().is("bar")) {
                line.group().parent().ifPresent(g -> bars.put(g.datum("splice"), line));
            }
        }
    }

    void run(List<Promise> promised) {
        Map<String, Promise> open = new HashMap<>();
        promised.forEach(promise -> open.put(promise.wire(), promise));
        Set<String> found = new HashSet<>();
        for (Way wire : seen.wires()) {
            Point first = wire.points().get(0);
            Promise promise = open.get(wire.id());
            if (promise == null) {
                flaws.add(new Flaw(Kind.WIRE_UNPROMISED, wire.id() + " is not of this sheet", first));
            } else if (!found.add(wire.id())) {
                flaws.add(new Flaw(Kind.WIRE_TWICE, wire.id() + " is drawn twice", first));
            } else {
                checkEnds(wire, promise);
            }
        }
        for (Promise promise : promised) {
            if (!found.contains(promise.wire())) {
                flaws.add(new Flaw(Kind.WIRE_ABSENT, promise.wire() + " is not drawn", new Point(0, 0)));
            }
        }
        bars.forEach(this::checkDots);
    }

    private void checkEnds(Way wire, Promise promise) {
        Point first = wire.points().get(0);
        Point last = wire.points().get(wire.points().size() - 1);
        if (!wire.group().datum("from").equals(promise.from())
                || !wire.group().datum("to").equals(promise.to())) {
            flaws.add(new Flaw(Kind.WRONG_END, wire.id() + " is said to end elsewhere than promised", first));
        }
        checkEnd(wire, first, promise.from());
        checkEnd(wire, last, promise.to());
    }

    private void checkEnd(Way wire, Point end, String at) {
        if (distance(end, at) > REACH) {
            flaws.add(new Flaw(Kind.WRONG_END, wire.id() + " does not reach " + at, end));
        }
    }

    private double distance(Point end, String at) {
        if (cells.containsKey(at)) {
            return fromOutline(end, cells.get(at).area());
        }
        if (flags.containsKey(at)) {
            Area flag = flags.get(at).area();
            double middle = flag.centre().y();
            return Math.min(end.distance(new Point(flag.x(), middle)), end.distance(new Point(flag.right(), middle)));
        }
        if (bars.containsKey(at)) {
            List<Point> bar = bars.get(at).points();
            Area area = Area.between(
                    bar.get(0).x(), bar.get(0).y(), bar.get(1).x(), bar.get(1).y());
            return fromEdge(end, area.x(), area);
        }
        return Double.MAX_VALUE;
    }

    private static double fromOutline(Point p, Area area) {
        double dx = Math.max(0, Math.max(area.x() - p.x(), p.x() - area.right()));
        double dy = Math.max(0, Math.max(area.y() - p.y(), p.y() - area.bottom()));
        double inside = Math.min(
                Math.min(p.x() - area.x(), area.right() - p.x()), Math.min(p.y() - area.y(), area.bottom() - p.y()));
        return dx == 0 && dy == 0 ? inside : Math.hypot(dx, dy);
    }

    private static double fromEdge(Point p, double x, Area area) {
        double dy = Math.max(0, Math.max(area.y() - p.y(), p.y() - area.bottom()));
        return Math.hypot(p.x() - x, dy);
    }

    private void checkDots(String splice, Line bar) {
        double top = Math.min(bar.points().get(0).y(), bar.points().get(1).y());
        double bottom = Math.max(bar.points().get(0).y(), bar.points().get(1).y());
        for (Patch dot : seen.patches) {
            boolean own = dot.group().is("dot")
                    && dot.group()
                            .parent()
                            .map(g -> g.datum("splice").equals(splice))
                            .orElse(false);
            if (!own) {
                continue;
            }
            Point at = dot.area().centre();
            int lines = (at.y() > top + REACH ? 1 : 0) + (at.y() < bottom - REACH ? 1 : 0);
            for (Way wire : seen.wires()) {
                lines += wire.points().get(0).distance(at) < REACH ? 1 : 0;
                lines += wire.points().get(wire.points().size() - 1).distance(at) < REACH ? 1 : 0;
            }
            if (lines > 3) {
                flaws.add(new Flaw(Kind.FOUR_WAY_DOT, "a dot of " + splice + " joins " + lines + " lines", at));
            }
        }
    }
}
