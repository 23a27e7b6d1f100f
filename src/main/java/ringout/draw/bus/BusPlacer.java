package ringout.draw.bus;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ringout.draw.bus.BusPlaced.Seat;
import ringout.draw.form.BadgeForm;
import ringout.draw.paper.Area;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.BusPoint;
import ringout.draw.scene.BusScene;
import ringout.draw.scene.BusStub;
import ringout.draw.spacing.Spread;

/** Finds the places of a bus diagram in the room on a sheet. */
final class BusPlacer {
    static final double HEADER = 8;
    static final double LEADER_STEP = 2.25;

    private static final double LEFT_ROOM = 10;
    private static final double RIGHT_ROOM = 5;
    private static final double STUB_ROOM = 46;
    /** Room above the lead that closes a ring for its label, where no line of its own can run through it. */
    static final double RING_LABEL = 8;

    private static final double RING_ROOM = 13;
    private static final double RING_ASIDE = 9;
    private static final double BOX_GAP = 3;
    private static final double LABEL_GAP = 4;
    private static final double PASS = 2;
    private static final double BELOW_BOXES = 6;
    private static final double DROP = 0.3;

    private final BusScene scene;
    private final BusMarks marks;
    private final Sizes sizes;
    private final Area area;
    private final BusScale scale;
    private final List<Double> pointX = new ArrayList<>();

    private BusPlacer(BusScene scene, BusMarks marks, Sizes sizes, Area area, BusScale scale) {
        this.scene = scene;
        this.marks = marks;
        this.sizes = sizes;
        this.area = area;
        this.scale = scale;
        double first = area.x() + leftRoom(scene) + (room(scene, area) - scale.length()) / 2;
        scale.places().forEach(place -> pointX.add(first + place));
    }

    /** {@return the places, if there is room; the width of the table's blocks is the room's} */
    static Optional<BusPlaced> place(BusScene scene, Area area) {
        return Sizes.all().stream()
                .flatMap(sizes -> place(scene, sizes, area).stream())
                .findFirst();
    }

    private static double leftRoom(BusScene scene) {
        return LEFT_ROOM + (scene.ring().isPresent() ? RING_ASIDE : 0);
    }

    private static double room(BusScene scene, Area area) {
        return area.width() - leftRoom(scene) - RIGHT_ROOM - (scene.ring().isPresent() ? RING_ASIDE : 0);
    }

    /** Within a ring the labels must not be wider than the trunk: leads too short for theirs are then broken. */
    private static Optional<BusPlaced> place(BusScene scene, Sizes sizes, Area area) {
        BusMarks marks = new BusMarks(scene.marks());
        List<Double> free = scene.leads().stream().map(lead -> 0.0).toList();
        List<Double> labelled = scene.leads().stream()
                .map(lead -> TrunkLabel.of(lead, marks, sizes.main()).width() + LABEL_GAP)
                .toList();
        return place(scene, marks, sizes, area, free)
                .or(() -> scene.ring().flatMap(ring -> place(scene, marks, sizes, area, labelled)));
    }

    /** Placed from the top first, then once more, lower by a part of the height that is left. */
    private static Optional<BusPlaced> place(
            BusScene scene, BusMarks marks, Sizes sizes, Area area, List<Double> least) {
        return BusScale.fitting(scene, least, room(scene, area), STUB_ROOM)
                .map(scale -> {
                    double bottom = new BusPlacer(scene, marks, sizes, area, scale)
                            .place()
                            .table()
                            .bottom();
                    double drop = Math.max(0, (area.bottom() - bottom) * DROP);
                    Area lower = new Area(area.x(), area.y() + drop, area.width(), area.height() - drop);
                    return new BusPlacer(scene, marks, sizes, lower, scale).place();
                })
                .filter(placed -> placed.table().bottom() <= area.bottom() + 1e-6)
                .filter(placed ->
                        placed.members().stream().allMatch(seat -> seat.box().right() <= area.right() + 1e-6))
                .filter(placed -> labelsFit(placed, area));
    }

    private static boolean labelsFit(BusPlaced placed, Area area) {
        int last = placed.labels().size() - 1;
        double limit = rightOfLabels(placed.scene(), placed.pointX(), area);
        return last < 0 || placed.labelX().get(last) + placed.labels().get(last).width() / 2 <= limit + 0.11;
    }

    /** Labels stay within a ring. */
    private static double rightOfLabels(BusScene scene, List<Double> pointX, Area area) {
        return scene.ring().isPresent() ? pointX.get(pointX.size() - 1) + 3 : area.right();
    }

    private BusPlaced place() {
        List<TrunkLabel> labels = scene.leads().stream()
                .map(l -> TrunkLabel.of(l, marks, sizes.main()))
                .toList();
        List<Double> middles = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            middles.add((pointX.get(i) + pointX.get(i + 1)) / 2);
        }
        double left = scene.ring().isPresent() ? pointX.get(0) - 3 : area.x();
        double right = rightOfLabels(scene, pointX, area);
        List<Double> widths = labels.stream().map(TrunkLabel::width).toList();
        Spread spread = Spread.of(middles, widths, LABEL_GAP, left, right);
        List<Double> labelX = new ArrayList<>();
        List<Double> reached = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            labelX.add(spread.middle(i));
            reached.add(Spread.reach(middles.get(i), spread.middle(i), widths.get(i), 2));
        }
        int steps = deepest(Spread.steps(middles, reached));
        boolean badges = labels.stream().anyMatch(l -> !l.badges().isEmpty());
        double ringY = area.y() + HEADER + RING_LABEL;
        double top = area.y() + HEADER + (scene.ring().isPresent() ? RING_ROOM : 0);
        double labelRoom = Math.max(sizes.main() * 2, badges ? BadgeForm.HEIGHT : 0);
        double labelY = top + labelRoom / 2;
        double dimensionY = labelY + labelRoom / 2 + 2 + steps * LEADER_STEP;
        double high = dimensionY + 3 + scene.moves().size() * LEADER_STEP + BusPlaced.OVER + 2;
        List<Seat> seats = seats(high);
        double bottom = seats.stream().mapToDouble(s -> s.box().bottom()).max().orElse(high);
        Area table = OhmsInk.area(scene.ohms(), sizes.table(), area.x(), bottom + BELOW_BOXES, area.width());
        return new BusPlaced(
                scene, marks, sizes, scale, pointX, high, labels, labelX, labelY, dimensionY, seats, ringY, table);
    }

    static int deepest(int[] steps) {
        int most = 0;
        for (int step : steps) {
            most = Math.max(most, step);
        }
        return most;
    }

    /** Markers first, then the boxes in one row, or in two when one is too short. */
    private List<Seat> seats(double high) {
        List<Seat> bare = new ArrayList<>();
        for (int i = 0; i < pointX.size(); i++) {
            BusPoint point = scene.trunk().get(i);
            double x = pointX.get(i);
            Optional<BusStub> stub = scene.stubs().stream()
                    .filter(s -> s.at().equals(point.id()))
                    .findFirst();
            if (point instanceof BusMember member) {
                double half = stub.isPresent() ? BusScale.HALF_HANGING + 0.5 : BusScale.HALF_MARKER;
                double over = BusPlaced.OVER;
                Area marker = new Area(x - half, high - over, 2 * half, BusPlaced.PAIR + 2 * over);
                bare.add(seat(member, Optional.empty(), marker));
            }
            double stubX = point instanceof BusMember ? x - BusScale.STUB_ASIDE : x;
            stub.ifPresent(s -> bare.add(seat(s.member(), Optional.of(s.lead()), hanging(s.lead(), stubX, high))));
        }
        bare.sort(Comparator.comparingDouble(Seat::leaderX));
        return seated(bare, high);
    }

    private Seat seat(BusMember member, Optional<BusLead> stub, Area marker) {
        return new Seat(MemberForm.of(member, stub, marks, sizes), marker, marker, 0, 0);
    }

    private Area hanging(BusLead lead, double x, double high) {
        double y = high + BusPlaced.PAIR + scale.stub(lead);
        return new Area(x - BusScale.HALF_HANGING, y, 2 * BusScale.HALF_HANGING, BusPlaced.HANGING);
    }

    private List<Seat> seated(List<Seat> bare, double high) {
        double from = bare.stream().mapToDouble(s -> s.marker().bottom()).max().orElse(high) + 1.5;
        double all = bare.stream().mapToDouble(s -> s.form().width() + BOX_GAP).sum() - BOX_GAP;
        boolean two = all > area.width();
        List<Double> wishes = bare.stream().map(Seat::leaderX).toList();
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < bare.size(); i++) {
            widths.add(two && i % 2 == 1 ? PASS : bare.get(i).form().width());
        }
        Spread first = Spread.of(wishes, widths, BOX_GAP, area.x(), area.right());
        List<Double> reached = new ArrayList<>();
        for (int i = 0; i < bare.size(); i++) {
            reached.add(Spread.reach(wishes.get(i), first.middle(i), widths.get(i), PASS));
        }
        double top = from + 2 + (1 + deepest(Spread.steps(wishes, reached))) * LEADER_STEP;
        List<Seat> seats = new ArrayList<>();
        double bottom = top;
        for (int i = 0; i < bare.size(); i++) {
            Seat seat = bare.get(i);
            MemberForm form = seat.form();
            Area box = new Area(first.middle(i) - form.width() / 2, top, form.width(), form.height());
            boolean later = two && i % 2 == 1;
            seats.add(new Seat(form, seat.marker(), box, later ? 1 : 0, first.middle(i)));
            bottom = later ? bottom : Math.max(bottom, box.bottom());
        }
        return two ? secondRow(seats, bottom) : seats;
    }

    private List<Seat> secondRow(List<Seat> seats, double bottom) {
        List<Seat> below = seats.stream().filter(s -> s.row() == 1).toList();
        List<Double> wishes = below.stream().map(Seat::passX).toList();
        List<Double> widths = below.stream().map(s -> s.form().width()).toList();
        Spread row = Spread.of(wishes, widths, BOX_GAP, area.x(), area.right());
        List<Double> reached = new ArrayList<>();
        for (int i = 0; i < below.size(); i++) {
            reached.add(Spread.reach(wishes.get(i), row.middle(i), widths.get(i), PASS));
        }
        double top = bottom + 2 + (1 + deepest(Spread.steps(wishes, reached))) * LEADER_STEP;
        List<Seat> all = new ArrayList<>();
        int next = 0;
        for (Seat seat : seats) {
            if (seat.row() == 1) {
                MemberForm form = seat.form();
                Area box = new Area(row.middle(next) - form.width() / 2, top, form.width(), form.height());
                all.add(new Seat(form, seat.marker(), box, 1, seat.passX()));
                next++;
            } else {
                all.add(seat);
            }
        }
        return all;
    }
}
