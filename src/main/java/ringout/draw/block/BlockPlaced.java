package ringout.draw.block;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.draw.block.BlockScene.BlockZone;
import ringout.draw.channel.ChannelPlan;
import ringout.draw.channel.ChannelPlan.Turn;
import ringout.draw.channel.Net;
import ringout.draw.form.BadgeForm;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;

/**
 * A block diagram with a place for everything.
 *
 * @param scene what it shows
 * @param frames of every zone, or of every part of one that is too wide for a row
 * @param units box of every unit by identifier
 * @param ways corners of every lead, from its first end to its last, by identifier
 * @param upwards whether a lead leaves its first end upwards, and its last, by identifier
 * @param both whether the name of a lead stands at both its ends; else at the lower only, or at its first
 */
record BlockPlaced(
        BlockScene scene,
        List<Frame> frames,
        Map<String, Area> units,
        Map<String, List<Point>> ways,
        Map<String, boolean[]> upwards,
        boolean both) {
    /** The frame of units of one zone. */
    record Frame(String name, Area area) {}

    /** Lattice, mm: two lines side by side are that far apart at least. */
    static final double STEP = 2.3;

    static final double BOX = 8;
    static final double BAND = 5.8;
    static final double TOP = 1.6;
    private static final double WORDS = 4;
    private static final double AIR = 2.2;
    private static final double MOST_AIR = 9;

    /** A zone that takes more of a row than this is drawn in parts. */
    private static final double MOST_OF_ROW = 0.6;

    /** {@return the scene in an area, with names at both ends if there is room; nothing when the area is too small} */
    static Optional<BlockPlaced> place(BlockScene scene, Area area) {
        for (boolean both : List.of(true, false)) {
            for (boolean roomy : List.of(true, false)) {
                Optional<BlockPlaced> placed = new Planner(scene, area, both, roomy).plan();
                if (placed.isPresent()) {
                    return placed;
                }
            }
        }
        return Optional.empty();
    }

    static double labelRoom(BlockScene scene) {
        return scene.leads().stream()
                        .mapToDouble(lead -> Lettering.width(lead.label(), Lettering.SMALL, Weight.REGULAR))
                        .max()
                        .orElse(0)
                + 2.4;
    }

    /** Finds the places. */
    private static final class Planner {
        private final BlockScene scene;
        private final Area area;
        private final boolean both;
        private final boolean roomy;
        private final int width;
        private final Map<String, Area> units = new LinkedHashMap<>();
        private final List<Frame> frames = new ArrayList<>();
        private final Map<String, List<Point>> ways = new LinkedHashMap<>();
        private final Map<String, boolean[]> upwards = new HashMap<>();
        /** Upper edge of the boxes of every row. */
        private final List<Double> tops = new ArrayList<>();

        Planner(BlockScene scene, Area area, boolean both, boolean roomy) {
            this.roomy = roomy;
            this.both = both;
            this.scene = scene;
            this.area = area;
            this.width = (int) (area.width() / STEP) - 1;
        }

        private int words(Cell cell) {
            double badges = scene.marks().stream()
                    .filter(mark -> mark.targets().contains(cell.unit.id()))
                    .mapToDouble(mark -> BadgeForm.of(mark).width() + BadgeForm.GAP)
                    .sum();
            double name = Lettering.width(cell.unit.name(), Lettering.MEDIUM, Weight.BOLD);
            return (int) Math.ceil((name + badges + WORDS) / STEP);
        }

        Optional<BlockPlaced> plan() {
            List<Item> items = new ArrayList<>();
            for (BlockZone zone : scene.zones()) {
                double wide = Lettering.width(zone.name(), Lettering.SMALL, Weight.REGULAR);
                Item item = new Item(-1, zone.name(), (int) Math.ceil((wide + WORDS) / STEP), roomy);
                zone.units().forEach(unit -> item.cells.add(new Cell(unit)));
                item.cells.forEach(cell -> cell.widen(Math.max(words(cell), 2 * ends(cell) * 2 / 3)));
                items.addAll(item.parts((int) (width * MOST_OF_ROW)));
            }
            Strips strips = new Strips(Rows.of(items, width), scene.leads(), width);
            if (!strips.settle(this::words)) {
                return Optional.empty();
            }
            return upright(strips)
                    ? Optional.of(new BlockPlaced(scene, frames, units, ways, upwards, both))
                    : Optional.empty();
        }

        private int ends(Cell cell) {
            String id = cell.unit.id();
            return (int) scene.leads().stream()
                    .filter(lead -> lead.from().equals(id) || lead.to().equals(id))
                    .count();
        }

        /** Gives heights to all rows and channels; false when they do not fit. */
        private boolean upright(Strips strips) {
            Bars bars = new Bars(strips);
            List<ChannelPlan> plans = new ArrayList<>();
            List<List<Net>> nets = new ArrayList<>();
            double room = labelRoom(scene);
            double bottom = area.bottom();
            List<Double> floors = new ArrayList<>();
            for (int r = 0; r < strips.rows.size(); r++) {
                nets.add(strips.channel(r, lead -> bars.track(lead).isEmpty()));
                plans.add(ChannelPlan.of(nets.get(r)));
            }
            double free = bottom - area.y() - needed(bars, plans, nets, room);

            if (free < 0 || plans.stream().anyMatch(plan -> !plan.clean())) {
                return false;
            }
            double more = Math.min(MOST_AIR, free / (strips.rows.size() + 1));
            bottom -= Math.max(0, free - more * strips.rows.size()) / 2;
            for (int r = 0; r < strips.rows.size(); r++) {
                tops.add(bottom - BAND - BOX);
                double floor = tops.get(r) - TOP - room;
                floors.add(floor);
                bottom = floor - channel(r, bars, plans, nets, room) - more;
            }
            boxes(strips);
            for (int lead = 0; lead < scene.leads().size(); lead++) {
                way(strips, bars, plans, nets, floors, lead);
            }
            return true;
        }

        private double needed(Bars bars, List<ChannelPlan> plans, List<List<Net>> nets, double room) {
            double height = 0;
            for (int r = 0; r < plans.size(); r++) {
                height += TOP + BOX + BAND + room + channel(r, bars, plans, nets, room);
            }
            return height;
        }

        /** From the names above a row to the foot of the next. */
        private double channel(int r, Bars bars, List<ChannelPlan> plans, List<List<Net>> nets, double room) {
            boolean used = !nets.get(r).isEmpty() || bars.tracks(r) > 0;
            double tracks = (bars.tracks(r) + plans.get(r).tracks()) * STEP + AIR;
            return (used ? tracks : 0) + (r == plans.size() - 1 ? 0 : both ? room : AIR);
        }

        private double x(double steps) {
            return area.x() + (steps + 0.5) * STEP;
        }

        private void boxes(Strips strips) {
            for (int r = 0; r < strips.rows.size(); r++) {
                double top = tops.get(r);
                for (Item item : strips.rows.get(r)) {
                    if (item.passes()) {
                        continue;
                    }
                    Area frame = Area.between(x(item.x), top - TOP, x(item.x + item.width()), top + BOX + BAND);
                    frames.add(new Frame(item.name, frame));
                    for (Cell cell : item.cells) {
                        units.put(cell.unit.id(), Area.between(x(cell.left), top, x(cell.right()), top + BOX));
                    }
                }
            }
        }

        private void way(
                Strips strips,
                Bars bars,
                List<ChannelPlan> plans,
                List<List<Net>> nets,
                List<Double> floors,
                int lead) {
            Cell.Port from = strips.from[lead];
            Cell.Port to = strips.to[lead];
            int a = strips.row(from);
            int b = strips.row(to);
            boolean rising = a <= b;
            List<Point> points = new ArrayList<>();
            Cell.Port low = rising ? from : to;
            Cell.Port high = rising ? to : from;
            int rowLow = Math.min(a, b);
            int rowHigh = Math.max(a, b);
            points.add(new Point(x(low.x), tops.get(rowLow)));
            if (bars.track(lead).isPresent()) {
                double y = floors.get(rowLow) - (bars.track(lead).getAsInt() + 0.5) * STEP;
                points.add(new Point(x(low.x), y));
                points.add(new Point(x(high.x), y));
            } else {
                for (int r = rowLow; r < Math.max(rowHigh, rowLow + 1); r++) {
                    turns(points, plans.get(r), nets.get(r), lead, floors.get(r) - bars.tracks(r) * STEP);
                }
            }
            points.add(new Point(x(high.x), rowLow == rowHigh ? tops.get(rowLow) : tops.get(rowHigh) + BOX));
            if (!rising) {
                Collections.reverse(points);
            }
            String id = scene.leads().get(lead).id();
            ways.put(id, points);
            upwards.put(id, new boolean[] {a <= b, b <= a});
        }

        private void turns(List<Point> points, ChannelPlan plan, List<Net> nets, int lead, double floor) {
            for (int net = 0; net < nets.size(); net++) {
                if (nets.get(net).link() == lead) {
                    for (Turn turn : plan.turns(net)) {
                        double y = floor - (turn.track() + 0.5) * STEP;
                        points.add(new Point(x(turn.from()), y));
                        points.add(new Point(x(turn.to()), y));
                    }
                }
            }
        }
    }
}
