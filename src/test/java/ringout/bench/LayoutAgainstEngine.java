package ringout.bench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.elk.alg.layered.options.LayeredMetaDataProvider;
import org.eclipse.elk.alg.layered.options.LayeredOptions;
import org.eclipse.elk.core.RecursiveGraphLayoutEngine;
import org.eclipse.elk.core.data.LayoutMetaDataService;
import org.eclipse.elk.core.options.CoreOptions;
import org.eclipse.elk.core.options.Direction;
import org.eclipse.elk.core.options.EdgeRouting;
import org.eclipse.elk.core.options.PortConstraints;
import org.eclipse.elk.core.options.PortSide;
import org.eclipse.elk.core.util.NullElkProgressMonitor;
import org.eclipse.elk.graph.ElkEdge;
import org.eclipse.elk.graph.ElkEdgeSection;
import org.eclipse.elk.graph.ElkNode;
import org.eclipse.elk.graph.ElkPort;
import org.eclipse.elk.graph.util.ElkGraphUtil;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.draw.form.Forms;
import ringout.draw.form.Link;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;
import ringout.draw.harness.WiringSheets;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.route.Routed;
import ringout.draw.route.RoutedLink;
import ringout.draw.wiring.WiringDrawing;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.read.AircraftReader;

/**
 * Crossings and bends of the wiring sheets, against those that the layered layout of the Eclipse Layout Kernel makes of the same
 * boxes with the same ports at the same places of the same sides, orthogonal, from left to right, all else at its defaults.
 * Wires that end in a reference to another sheet have no way in either. Arguments: folders of aircraft; all samples when none is
 * given.
 */
public final class LayoutAgainstEngine {
    private static final long STACK = 64L << 20;

    private LayoutAgainstEngine() {}

    /**
     * Crossings and turns of some lines.
     *
     * @param crossings pairs of pieces of different lines that cross
     * @param bends turns of all lines
     */
    record Count(int crossings, int bends) {
        Count plus(Count other) {
            return new Count(crossings + other.crossings, bends + other.bends);
        }
    }

    /**
     * What the sheets of one aircraft or of all count.
     *
     * @param what the folder, or {@code all}
     * @param own of the sheets
     * @param engine of the engine
     */
    record Line(String what, Count own, Count engine) {
        private String words() {
            return String.format(
                    Locale.ROOT,
                    "%s: crossings %d against %d, ratio %s; bends %d against %d, ratio %s",
                    what,
                    own.crossings(),
                    engine.crossings(),
                    ratio(own.crossings(), engine.crossings()),
                    own.bends(),
                    engine.bends(),
                    ratio(own.bends(), engine.bends()));
        }

        private static String ratio(int one, int other) {
            return other == 0 ? "-" : String.format(Locale.ROOT, "%.2f", (double) one / other);
        }
    }

    /** Counts; see the class. */
    public static void main(String[] arguments) throws InterruptedException {
        List<String> folders = arguments.length == 0
                ? List.of("samples/linewarden", "samples/dewmaker", "samples/linewarden-review", "samples/starter")
                : List.of(arguments);
        of(folders).forEach(line -> System.out.println(line.words()));
    }

    /** A line for each aircraft, then one for all. */
    static List<Line> of(List<String> folders) throws InterruptedException {
        LayoutMetaDataService.getInstance().registerLayoutMetaDataProviders(new LayeredMetaDataProvider());
        List<Line> lines = new ArrayList<>();
        // the engine recurses deeply
        Thread thread = new Thread(null, () -> folders.forEach(folder -> lines.add(compare(folder))), "layout", STACK);
        thread.start();
        thread.join();
        Line all = new Line("all", new Count(0, 0), new Count(0, 0));
        for (Line line : lines) {
            all = new Line("all", all.own().plus(line.own()), all.engine().plus(line.engine()));
        }
        lines.add(all);
        return lines;
    }

    private static Line compare(String folder) {
        List<Circuit> circuits =
                Circuit.all(Wiring.of(AircraftReader.read(Path.of(folder)).aircraft()));
        Count own = new Count(0, 0);
        Count engine = new Count(0, 0);
        for (WiringDrawing.Fits sheet :
                WiringSheets.of(circuits.get(0), Review.of(circuits, Catalogue.looking(), Review.NO_DAY), "")) {
            own = own.plus(own(sheet.routed()));
            engine = engine.plus(engine(sheet.routed()));
        }
        return new Line(folder, own, engine);
    }

    private static Count own(Routed routed) {
        List<List<Point>> ways = routed.links().stream()
                .filter(link -> !link.link().flagged())
                .map(RoutedLink::points)
                .toList();
        return count(ways);
    }

    private static Count engine(Routed routed) {
        Forms forms = routed.placed().forms();
        ElkNode root = ElkGraphUtil.createGraph();
        root.setProperty(CoreOptions.ALGORITHM, LayeredOptions.ALGORITHM_ID);
        root.setProperty(CoreOptions.DIRECTION, Direction.RIGHT);
        root.setProperty(CoreOptions.EDGE_ROUTING, EdgeRouting.ORTHOGONAL);
        Map<Integer, ElkPort> ports = new HashMap<>();
        for (NodeForm form : forms.nodes()) {
            Area area = routed.area(form);
            ElkNode node = ElkGraphUtil.createNode(root);
            node.setDimensions(area.width(), area.height());
            node.setProperty(CoreOptions.PORT_CONSTRAINTS, PortConstraints.FIXED_POS);
            for (Tap tap : forms.taps()) {
                if (tap.node() == form.index()) {
                    boolean right = routed.placed().right(tap);
                    ElkPort port = ElkGraphUtil.createPort(node);
                    port.setLocation(right ? area.width() : 0, routed.end(tap).y() - area.y());
                    port.setProperty(CoreOptions.PORT_SIDE, right ? PortSide.EAST : PortSide.WEST);
                    ports.put(tap.index(), port);
                }
            }
        }
        List<ElkEdge> edges = new ArrayList<>();
        for (Link link : forms.links()) {
            if (!link.flagged()) {
                edges.add(ElkGraphUtil.createSimpleEdge(ports.get(link.from()), ports.get(link.to())));
            }
        }
        new RecursiveGraphLayoutEngine().layout(root, new NullElkProgressMonitor());
        return count(edges.stream().map(LayoutAgainstEngine::way).toList());
    }

    private static List<Point> way(ElkEdge edge) {
        ElkEdgeSection section = edge.getSections().get(0);
        List<Point> points = new ArrayList<>();
        points.add(new Point(section.getStartX(), section.getStartY()));
        section.getBendPoints().forEach(bend -> points.add(new Point(bend.getX(), bend.getY())));
        points.add(new Point(section.getEndX(), section.getEndY()));
        return points;
    }

    private static Count count(List<List<Point>> ways) {
        int crossings = 0;
        int bends = 0;
        for (int i = 0; i < ways.size(); i++) {
            bends += ways.get(i).size() - 2;
            for (List<Point> other : ways.subList(i + 1, ways.size())) {
                crossings += crossings(ways.get(i), other);
            }
        }
        return new Count(crossings, bends);
    }

    private static int crossings(List<Point> one, List<Point> other) {
        int crossings = 0;
        for (int i = 1; i < one.size(); i++) {
            for (int j = 1; j < other.size(); j++) {
                boolean crosses = cross(one.get(i - 1), one.get(i), other.get(j - 1), other.get(j))
                        || cross(other.get(j - 1), other.get(j), one.get(i - 1), one.get(i));
                crossings += crosses ? 1 : 0;
            }
        }
        return crossings;
    }

    /** Whether a level piece and a plumb piece cross, each inside the other's length. */
    private static boolean cross(Point a, Point b, Point c, Point d) {
        boolean level = Math.abs(a.y() - b.y()) < 1e-6 && Math.abs(c.x() - d.x()) < 1e-6;
        return level && between(c.x(), a.x(), b.x()) && between(a.y(), c.y(), d.y());
    }

    private static boolean between(double at, double one, double other) {
        return at > Math.min(one, other) + 1e-6 && at < Math.max(one, other) - 1e-6;
    }
}
