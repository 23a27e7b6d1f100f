package ringout.draw.bus;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.draw.bus.BusPlaced.Seat;
import ringout.draw.bus.BusRouted.LegWay;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusLead.Legs;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.BusPoint;
import ringout.draw.scene.BusStub;
import ringout.draw.scene.Move;
import ringout.draw.scene.Presence;
import ringout.draw.spacing.Spread;

/** Finds the lines of a placed bus diagram. */
final class BusRouter {
    private static final double RING_ASIDE = 5;
    private static final double MOVE_ASIDE = 2.2;
    private static final double MARGIN = 2;

    private final BusPlaced placed;
    private final List<LegWay> wires = new ArrayList<>();

    private BusRouter(BusPlaced placed) {
        this.placed = placed;
    }

    static BusRouted route(BusPlaced placed) {
        BusRouter router = new BusRouter(placed);
        router.addTrunk();
        placed.scene().stubs().forEach(router::addStub);
        placed.scene().ring().ifPresent(router::addRing);
        return new BusRouted(placed, router.wires, router.leaders(), router.labelLeaders(), router.moves());
    }

    private void add(BusLead lead, boolean high, String from, String to, List<Point> points) {
        String leg = high ? "H" : "L";
        boolean lost = lead.legs() == (high ? Legs.LOW_ONLY : Legs.HIGH_ONLY);
        Presence presence = lost ? Presence.MISSING : lead.presence();
        wires.add(new LegWay(lead.id() + "." + leg, lead.label(), leg, from, to, points, presence));
    }

    private Seat seatOf(String member) {
        return placed.members().stream()
                .filter(s -> s.form().member().id().equals(member))
                .findFirst()
                .orElseThrow();
    }

    /** Where a leg of the trunk meets a place: the edge of a member's sign, or the dot of a tee. */
    private double edge(int place, boolean high, boolean fromTheLeft) {
        BusPoint point = placed.scene().trunk().get(place);
        if (point instanceof BusMember member) {
            Area marker = seatOf(member.id()).marker();
            return fromTheLeft ? marker.x() : marker.right();
        }
        return dot(placed.pointX().get(place), high);
    }

    static double dot(double x, boolean high) {
        return high ? x - BusPlaced.STUB_PAIR / 2 : x + BusPlaced.STUB_PAIR / 2;
    }

    private static String nameAt(BusPoint point, boolean high) {
        return point instanceof BusMember ? point.id() : point.id() + (high ? ".H" : ".L");
    }

    private void addTrunk() {
        List<BusPoint> trunk = placed.scene().trunk();
        for (int i = 0; i + 1 < trunk.size(); i++) {
            for (boolean high : new boolean[] {true, false}) {
                double y = high ? placed.high() : placed.low();
                List<Point> line = List.of(new Point(edge(i, high, false), y), new Point(edge(i + 1, high, true), y));
                String from = nameAt(trunk.get(i), high);
                add(placed.scene().leads().get(i), high, from, nameAt(trunk.get(i + 1), high), line);
            }
        }
    }

    private void addStub(BusStub stub) {
        Area hanging = seatOf(stub.member().id()).marker();
        double x = hanging.centre().x();
        BusPoint at = placed.scene().trunk().stream()
                .filter(p -> p.id().equals(stub.at()))
                .findFirst()
                .orElseThrow();
        for (boolean high : new boolean[] {true, false}) {
            double legX = dot(x, high);
            double from = at instanceof BusMember member
                    ? seatOf(member.id()).marker().bottom()
                    : high ? placed.high() : placed.low();
            List<Point> line = List.of(new Point(legX, from), new Point(legX, hanging.y()));
            add(stub.lead(), high, nameAt(at, high), stub.member().id(), line);
        }
    }

    private void addRing(BusLead ring) {
        List<BusPoint> trunk = placed.scene().trunk();
        String first = trunk.get(0).id();
        String last = trunk.get(trunk.size() - 1).id();
        Area left = seatOf(first).marker();
        Area right = seatOf(last).marker();
        for (boolean high : new boolean[] {true, false}) {
            double out = RING_ASIDE + (high ? 0 : BusPlacer.LEADER_STEP);
            double y = placed.ringY() + (high ? BusPlacer.LEADER_STEP : 0);
            double leg = high ? placed.high() : placed.low();
            add(
                    ring,
                    high,
                    last,
                    first,
                    List.of(
                            new Point(right.right(), leg),
                            new Point(right.right() + out, leg),
                            new Point(right.right() + out, y),
                            new Point(left.x() - out, y),
                            new Point(left.x() - out, leg),
                            new Point(left.x(), leg)));
        }
    }

    private List<List<Point>> leaders() {
        List<Double> from = new ArrayList<>();
        List<Double> to = new ArrayList<>();
        List<Double> passes = new ArrayList<>();
        List<Double> ends = new ArrayList<>();
        for (Seat seat : placed.members()) {
            from.add(seat.leaderX());
            to.add(
                    seat.row() == 1
                            ? Spread.reach(seat.leaderX(), seat.passX(), MARGIN, MARGIN)
                            : reach(seat.leaderX(), seat));
            if (seat.row() == 1) {
                passes.add(to.get(to.size() - 1));
                ends.add(reach(to.get(to.size() - 1), seat));
            }
        }
        int[] steps = Spread.steps(from, to);
        int[] lower = Spread.steps(passes, ends);
        double turn = placed.leadersFrom();
        double rowBottom = placed.members().stream()
                .filter(s -> s.row() == 0)
                .mapToDouble(s -> s.box().bottom())
                .max()
                .orElse(turn);
        List<List<Point>> leaders = new ArrayList<>();
        int next = 0;
        for (int i = 0; i < from.size(); i++) {
            Seat seat = placed.members().get(i);
            List<Point> points = new ArrayList<>();
            points.add(new Point(from.get(i), seat.marker().bottom()));
            jog(points, to.get(i), turn + (1 + steps[i]) * BusPlacer.LEADER_STEP);
            if (seat.row() == 1) {
                jog(points, ends.get(next), rowBottom + (1 + lower[next]) * BusPlacer.LEADER_STEP);
                next++;
            }
            points.add(new Point(points.get(points.size() - 1).x(), seat.box().y()));
            leaders.add(points);
        }
        return leaders;
    }

    private static double reach(double x, Seat seat) {
        return Spread.reach(x, seat.box().centre().x(), seat.box().width(), MARGIN);
    }

    private static void jog(List<Point> points, double x, double y) {
        double before = points.get(points.size() - 1).x();
        if (Math.abs(before - x) > 1e-6) {
            points.add(new Point(before, y));
            points.add(new Point(x, y));
        }
    }

    private List<List<Point>> labelLeaders() {
        List<Double> from = new ArrayList<>();
        List<Double> to = new ArrayList<>();
        for (int i = 0; i < placed.labels().size(); i++) {
            from.add((placed.pointX().get(i) + placed.pointX().get(i + 1)) / 2);
            to.add(Spread.reach(
                    from.get(i), placed.labelX().get(i), placed.labels().get(i).width(), MARGIN));
        }
        int[] steps = Spread.steps(from, to);
        List<List<Point>> leaders = new ArrayList<>();
        for (int i = 0; i < from.size(); i++) {
            List<Point> points = new ArrayList<>(List.of(new Point(from.get(i), placed.dimensionY())));
            jog(points, to.get(i), placed.dimensionY() - (steps[i] + 0.4) * BusPlacer.LEADER_STEP);
            points.add(new Point(
                    points.get(points.size() - 1).x(),
                    placed.labelY() + placed.sizes().main() / 2 + 0.8));
            leaders.add(points);
        }
        return leaders;
    }

    /** Arrows between the trunk and the dimension line, one above the other. */
    private Map<String, List<Point>> moves() {
        Map<String, List<Point>> ways = new LinkedHashMap<>();
        double y = placed.high() - BusPlaced.OVER - 1.5;
        for (Move move : placed.scene().moves()) {
            y -= BusPlacer.LEADER_STEP;
            List<Point> points = new ArrayList<>(approach(move.from(), y));
            List<Point> end = new ArrayList<>(approach(move.to(), y));
            Collections.reverse(end);
            points.addAll(end);
            ways.put(move.id(), points);
        }
        return ways;
    }

    /** The right edge of the member of the trunk that a stub hangs from; far left if it hangs from a tee. */
    private double rightOfHost(Seat hanging) {
        return placed.scene().stubs().stream()
                .filter(stub -> stub.member().equals(hanging.form().member()))
                .flatMap(stub -> placed.members().stream()
                        .filter(s -> s.form().member().id().equals(stub.at())))
                .mapToDouble(s -> s.marker().right())
                .findFirst()
                .orElse(0);
    }

    /** From a terminator to a height above the trunk: straight up from the trunk, beside its stub from a hanging one. */
    private List<Point> approach(String terminator, double y) {
        Seat seat = placed.members().stream()
                .filter(s -> s.form().member().terminatorId().equals(terminator))
                .findFirst()
                .orElseThrow();
        Area marker = seat.marker();
        if (seat.form().stub().isEmpty()) {
            return List.of(new Point(seat.leaderX(), marker.y()), new Point(seat.leaderX(), y));
        }
        double x = Math.max(marker.right(), rightOfHost(seat)) + MOVE_ASIDE;
        double middle = marker.centre().y();
        return List.of(new Point(marker.right(), middle), new Point(x, middle), new Point(x, y));
    }
}
