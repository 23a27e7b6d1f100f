package ringout.draw.route;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.draw.channel.ChannelPlan;
import ringout.draw.channel.ChannelPlan.Turn;
import ringout.draw.channel.Net;
import ringout.draw.form.Forms;
import ringout.draw.form.Lane;
import ringout.draw.form.Lattice;
import ringout.draw.form.Link;
import ringout.draw.form.Tap;
import ringout.draw.paper.Point;
import ringout.draw.place.Placed;
import ringout.draw.place.Widths;

/** Finds the way of every wire of a placed scene. */
public final class Router {
    private final Placed placed;
    private final Forms forms;
    private final List<ChannelPlan> plans = new ArrayList<>();
    private final List<Map<Integer, Integer>> netOfLink = new ArrayList<>();
    private final Widths widths;

    private Router(Placed placed) {
        this.placed = placed;
        this.forms = placed.forms();
        List<List<Net>> channels = placed.channels();
        int[] tracks = new int[channels.size()];
        for (int c = 0; c < tracks.length; c++) {
            ChannelPlan plan = ChannelPlan.of(channels.get(c));
            tracks[c] = plan.tracks();
            plans.add(plan);
            Map<Integer, Integer> nets = new HashMap<>();
            for (int n = 0; n < channels.get(c).size(); n++) {
                nets.put(channels.get(c).get(n).link(), n);
            }
            netOfLink.add(nets);
        }
        this.widths = placed.widths(tracks);
    }

    /** {@return the scene with every wire's way} */
    public static Routed route(Placed placed) {
        Router router = new Router(placed);
        List<RoutedLink> links = new ArrayList<>();
        for (Link link : router.forms.links()) {
            links.add(new RoutedLink(link, link.flagged() ? router.toFlag(link) : router.across(link)));
        }
        Routed bare = new Routed(placed, router.widths, links, List.of());
        return new Routed(placed, router.widths, links, MidLabels.find(bare));
    }

    private List<Point> toFlag(Link link) {
        Tap tap = forms.taps().get(link.from());
        Lane lane = tap.lane();
        Point end = Columns.end(placed, widths, tap);
        double out = placed.right(tap) ? 1 : -1;
        NodeEdge edge = NodeEdge.of(placed, widths, tap);
        return List.of(end, new Point(edge.x() + out * lane.flagStart(), end.y()));
    }

    private List<Point> across(Link link) {
        Tap from = forms.taps().get(link.from());
        Tap to = forms.taps().get(link.to());
        List<Point> points = new ArrayList<>();
        points.add(Columns.end(placed, widths, from));
        int channel = channelOf(from);
        for (int column : placed.passedColumns(link)) {
            addTurns(points, channel, link);
            channel = column == channel ? column + 1 : column;
        }
        addTurns(points, channel, link);
        points.add(Columns.end(placed, widths, to));
        return points;
    }

    private int channelOf(Tap tap) {
        return placed.column(forms.nodes().get(tap.node())) + (placed.right(tap) ? 1 : 0);
    }

    private void addTurns(List<Point> points, int channel, Link link) {
        Integer net = netOfLink.get(channel).get(link.index());
        if (net == null) {
            throw new IllegalStateException(link.id() + " has no net in channel " + channel);
        }
        for (Turn turn : plans.get(channel).turns(net)) {
            double x = Columns.track(widths, channel, turn.track());
            points.add(new Point(x, Lattice.mm(turn.from())));
            points.add(new Point(x, Lattice.mm(turn.to())));
        }
    }
}
