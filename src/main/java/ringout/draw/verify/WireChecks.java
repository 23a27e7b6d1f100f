package ringout.draw.verify;

import java.util.List;
import java.util.Map;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.verify.Flaw.Kind;
import ringout.draw.verify.Seen.Patch;
import ringout.draw.verify.Seen.Way;

/** Wires against wires and units. */
final class WireChecks {
    private static final double LEAST_DISTANCE = 2.0;
    private static final double TOUCHING = 1.0;
    private static final double SLACK = 0.05;

    private final Seen seen;
    private final List<Flaw> flaws;
    private final List<Segment> pieces;

    WireChecks(Seen seen, List<Flaw> flaws) {
        this.seen = seen;
        this.flaws = flaws;
        this.pieces = Segment.of(seen.ways());
    }

    void run() {
        for (int i = 0; i < pieces.size(); i++) {
            Segment piece = pieces.get(i);
            if (!piece.level() && !piece.plumb()) {
                flaws.add(new Flaw(Kind.OBLIQUE, piece.way().id() + " runs aslant", piece.a()));
            }
            for (int j = i + 1; j < pieces.size(); j++) {
                compare(piece, pieces.get(j));
            }
        }
        seen.ways().forEach(this::checkCorners);
        checkUnits();
    }

    private void compare(Segment a, Segment b) {
        boolean same = a.way().same(b.way());
        if (a.beside(b) <= SLACK) {
            return;
        }
        String both = a.way().id() + " and " + b.way().id();
        if (a.apart(b) < SLACK) {
            flaws.add(new Flaw(Kind.WIRE_ON_WIRE, both + " lie on each other", a.a()));
        } else if (!same && a.apart(b) < LEAST_DISTANCE - SLACK) {
            flaws.add(new Flaw(Kind.TOO_CLOSE, both + " are nearer than 2 mm", a.a()));
        }
    }

    private void checkCorners(Way way) {
        for (Point corner : way.points()) {
            for (Segment piece : pieces) {
                if (!piece.way().same(way) && piece.distance(corner) < TOUCHING && !joined(way, piece.way(), corner)) {
                    flaws.add(new Flaw(
                            Kind.WIRE_TOUCHES,
                            way.id() + " turns or ends on " + piece.way().id(),
                            corner));
                }
            }
        }
    }

    /** Whether both wires end here, at one and the same splice. */
    private static boolean joined(Way a, Way b, Point at) {
        String endOfA = endAt(a, at);
        return !endOfA.isEmpty() && endOfA.equals(endAt(b, at));
    }

    private static String endAt(Way way, Point at) {
        if (way.points().get(0).distance(at) < SLACK) {
            return way.group().datum("from");
        }
        boolean last = way.points().get(way.points().size() - 1).distance(at) < SLACK;
        return last ? way.group().datum("to") : "";
    }

    private void checkUnits() {
        List<Map.Entry<String, Patch>> units =
                List.copyOf(seen.outlines("body", "unit").entrySet());
        for (int i = 0; i < units.size(); i++) {
            String name = units.get(i).getKey();
            Area body = units.get(i).getValue().area();
            for (Segment piece : pieces) {
                if (piece.area().grown(SLACK).overlaps(body.grown(-2 * SLACK))) {
                    flaws.add(new Flaw(Kind.WIRE_THROUGH_UNIT, piece.way().id() + " runs through " + name, piece.a()));
                }
            }
            for (Map.Entry<String, Patch> other : units.subList(i + 1, units.size())) {
                if (other.getValue().area().overlaps(body)) {
                    flaws.add(new Flaw(Kind.UNIT_ON_UNIT, name + " and " + other.getKey() + " overlap", body.centre()));
                }
            }
        }
    }

    int crossings() {
        int crossings = 0;
        for (int i = 0; i < pieces.size(); i++) {
            for (int j = i + 1; j < pieces.size(); j++) {
                boolean different = !pieces.get(i).way().same(pieces.get(j).way());
                crossings += different && pieces.get(i).crosses(pieces.get(j)) ? 1 : 0;
            }
        }
        return crossings;
    }

    int bends() {
        int bends = 0;
        for (int i = 1; i < pieces.size(); i++) {
            boolean sameWire = pieces.get(i).way().same(pieces.get(i - 1).way());
            bends += sameWire && pieces.get(i).level() != pieces.get(i - 1).level() ? 1 : 0;
        }
        return bends;
    }
}
