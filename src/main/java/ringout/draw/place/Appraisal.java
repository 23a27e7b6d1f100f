package ringout.draw.place;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.channel.Net;
import ringout.draw.channel.TurnOrder;
import ringout.draw.place.Traffic.Piece;

/** An arrangement with its heights, and how good a picture it makes. */
final class Appraisal {
    private static final double CROSSING = 10;
    private static final double TURNED = 5;
    private static final double OVERLAP = 30;

    /** A wire led past a box: less than this in crossings is no reason to go round it. */
    private static final double PASSED = 12;

    private static final double STEP_OF_WIRE = 0.15;
    private static final double MM_TOO_WIDE = 3;
    private static final double STEP_TOO_HIGH = 25;
    private static final double MM_OF_WIDTH = 0.05;
    private static final double STEP_OF_HEIGHT = 0.1;

    final Arrangement state;
    final Shape shape;
    final int[] level;
    final List<List<Net>> channels;
    final Widths widths;
    final int top;
    final int height;
    final double score;
    final int crossings;

    private Appraisal(Arrangement state, Shape shape, Traffic traffic, int[] level, Room room) {
        this.state = state;
        this.shape = shape;
        this.level = level;
        this.channels = netsOf(traffic, level);
        int[] tracks = new int[channels.size()];
        double cost = 0;
        int crossed = 0;
        for (int c = 0; c < tracks.length; c++) {
            Turning turning = Turning.of(channels.get(c));
            tracks[c] = turning.tracks();
            crossed += turning.crossings() + turning.overlaps();
            cost += turning.cost();
        }
        this.crossings = crossed;
        cost += PASSED * passes(state);
        this.widths = Widths.of(state, tracks);
        int upper = Integer.MAX_VALUE;
        int lower = 0;
        for (List<Integer> stack : state.stacks) {
            for (int slot : stack) {
                upper = Math.min(upper, level[slot]);
                lower = Math.max(lower, level[slot] + (state.isPass(slot) ? 0 : shape.nodeHeight[slot]));
            }
        }
        this.top = Math.min(upper, lower);
        this.height = lower - top;
        double width = widths.total();
        this.score = cost
                + MM_OF_WIDTH * width
                + MM_TOO_WIDE * Math.max(0, width - room.width())
                + STEP_OF_HEIGHT * height
                + STEP_TOO_HIGH * Math.max(0, height - room.height());
    }

    static Appraisal of(Arrangement state, Room room) {
        Shape shape = Shape.of(state);
        Traffic traffic = Traffic.of(state, shape);
        int[] level = Levels.of(state, shape, traffic, room.height());
        return new Appraisal(state, shape, traffic, level, room);
    }

    private static int passes(Arrangement state) {
        int passes = 0;
        for (List<Integer> stack : state.stacks) {
            for (int slot : stack) {
                passes += state.isPass(slot) ? 1 : 0;
            }
        }
        return passes;
    }

    private static List<List<Net>> netsOf(Traffic traffic, int[] level) {
        List<List<Net>> channels = new ArrayList<>();
        for (List<Piece> pieces : traffic.channels) {
            List<Net> nets = new ArrayList<>(pieces.size());
            for (Piece p : pieces) {
                int a = level[p.a().slot()] + p.a().offset();
                int b = level[p.b().slot()] + p.b().offset();
                nets.add(new Net(p.link(), p.a().leftEdge(), a, p.b().leftEdge(), b));
            }
            channels.add(nets);
        }
        return channels;
    }

    /** What the turns of one channel cost. */
    private record Turning(int crossings, int overlaps, int turned, int length, int tracks) {
        static Turning of(List<Net> nets) {
            List<Net> turning = new ArrayList<>();
            int length = 0;
            for (Net net : nets) {
                if (!net.straight()) {
                    turning.add(net);
                    length += net.bottom() - net.top();
                }
            }
            int crossings = 0;
            for (Net net : nets) {
                crossings += net.straight() ? crossedBy(net, turning) : 0;
            }
            TurnOrder order = TurnOrder.of(turning);
            int tracks = 0;
            for (int track : order.tracks()) {
                tracks = Math.max(tracks, track + 1);
            }
            return new Turning(crossings + order.crossings(), order.overlaps(), turning.size(), length, tracks);
        }

        double cost() {
            return CROSSING * crossings + OVERLAP * overlaps + TURNED * turned + STEP_OF_WIRE * length;
        }

        private static int crossedBy(Net straight, List<Net> turning) {
            int crossings = 0;
            for (Net net : turning) {
                crossings += straight.a() > net.top() && straight.a() < net.bottom() ? 1 : 0;
            }
            return crossings;
        }
    }
}
