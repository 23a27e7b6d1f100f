package ringout.draw.tree;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;

/**
 * A tree with a place for everything: columns by distance from the packs, leaves in the last one, and every line level.
 *
 * @param scene the tree
 * @param brief whether the short labels are used
 * @param boxes of every node
 * @param levels of every link, mm below the upper edge
 * @param labelEnd of every link, where its label ends, mm
 * @param cellWidths of the columns of the leaves, the name first
 */
@SuppressWarnings("NullAway") // every key asked for is an id of the same scene, which was put before
record TreePlaced(
        TreeScene scene,
        boolean brief,
        Map<String, Area> boxes,
        Map<String, Double> levels,
        Map<String, Double> labelEnd,
        List<Double> cellWidths) {
    static final double ROW = 5.2;
    static final double PITCH = 6.02;
    static final double HEAD = 6.2;
    static final double LINE = 4.2;
    static final double MARGIN = 1.5;
    static final double BAR = 1.6;
    static final double METER = 4.8;
    static final double BADGE = 9;
    private static final double GAP = 2.0;
    private static final double BOX_GAP = 3.1;
    private static final double AIR = 7;
    private static final double FUSE = 8;
    private static final double TOP = 5;

    /** {@return the tree in an area, with lengths where there is room for them; nothing when it is too small} */
    static Optional<TreePlaced> place(TreeScene scene, Area area) {
        for (boolean brief : List.of(false, true)) {
            Planner planner = new Planner(scene, brief);
            Optional<TreePlaced> placed = planner.plan(area);
            if (placed.isPresent()) {
                return placed;
            }
        }
        return Optional.empty();
    }

    static double width(String text, boolean bold) {
        return Lettering.width(text, Lettering.SMALL, bold ? Weight.BOLD : Weight.REGULAR);
    }

    List<String> lines(TreeNode node) {
        return brief ? node.brief() : node.lines();
    }

    String label(TreeLink link) {
        return brief ? link.brief() : link.label();
    }

    /** Finds the places. */
    private static final class Planner {
        private final TreeScene scene;
        private final boolean brief;
        private final Map<String, List<TreeLink>> below = new HashMap<>();
        private final Map<String, List<TreeLink>> above = new HashMap<>();
        private final Map<String, TreeNode> byId = new HashMap<>();
        private final Map<String, Integer> depth = new HashMap<>();
        private final Map<String, Area> boxes = new LinkedHashMap<>();
        private final Map<String, Double> middles = new HashMap<>();
        private double next;

        Planner(TreeScene scene, boolean brief) {
            this.scene = scene;
            this.brief = brief;
            scene.nodes().forEach(node -> byId.put(node.id(), node));
            for (TreeLink link : scene.links()) {
                below.computeIfAbsent(link.from(), key -> new ArrayList<>()).add(link);
                above.computeIfAbsent(link.to(), key -> new ArrayList<>()).add(link);
            }
        }

        Optional<TreePlaced> plan(Area area) {
            next = area.y() + TOP;
            Set<String> done = new LinkedHashSet<>();
            for (TreeNode node : scene.nodes()) {
                if (!above.containsKey(node.id()) && !done.contains(node.id())) {
                    List<String> heads = partners(node.id());
                    done.addAll(heads);
                    settle(heads, 0);
                }
            }
            double spare = area.bottom() - next;
            return spare < 0 ? Optional.empty() : across(area, spare);
        }

        /** A node and those that feed with it the one thing below. */
        private List<String> partners(String id) {
            List<TreeLink> down = below.getOrDefault(id, List.of());
            return down.size() == 1
                    ? above.get(down.get(0).to()).stream().map(TreeLink::from).toList()
                    : List.of(id);
        }

        /** Gives heights to nodes that feed together, and to all below them. */
        private void settle(List<String> heads, int column) {
            double top = next;
            Set<String> seen = new LinkedHashSet<>();
            double least = heads.stream().mapToDouble(this::tall).sum();
            heads.forEach(id -> depth.put(id, column));
            for (String head : heads) {
                for (TreeLink link : below.getOrDefault(head, List.of())) {
                    List<String> group = partners(link.to());
                    if (seen.add(link.to())) {
                        seen.addAll(group);
                        settle(group, column + 1);
                    }
                }
            }
            double used = next - top;
            if (used < least) {
                shift(heads, (least - used) / 2);
                used = least;
            }
            next = top + used;
            double y = top + (used - least) / 2;
            for (String id : heads) {
                double tall = tall(id);
                middles.put(id, y + tall / 2);
                y += tall;
            }
        }

        private void shift(List<String> heads, double by) {
            for (String head : heads) {
                for (TreeLink link : below.getOrDefault(head, List.of())) {
                    if (above.get(link.to()).get(0).equals(link)) {
                        middles.computeIfPresent(link.to(), (key, at) -> at + by);
                        shift(List.of(link.to()), by);
                    }
                }
            }
        }

        private TreeNode node(String id) {
            return Objects.requireNonNull(byId.get(id));
        }

        private double tall(String id) {
            return height(id) + (node(id).leaf() ? GAP : BOX_GAP);
        }

        private double height(String id) {
            TreeNode node = node(id);
            return node.leaf()
                    ? PITCH - GAP
                    : HEAD
                            + (brief ? node.brief() : node.lines()).size() * LINE
                            + 1
                            + (node.share().isPresent() ? METER : 0);
        }

        private Optional<TreePlaced> across(Area area, double spare) {
            List<Double> cells = cells();
            double leafWidth = cells.stream().mapToDouble(w -> w).sum() + (cells.size() + 1) * 2 * MARGIN;
            double badges = scene.nodes().stream()
                            .filter(TreeNode::leaf)
                            .mapToLong(n -> marks(n.id()))
                            .max()
                            .orElse(0)
                    * BADGE;
            double leafX = area.right() - leafWidth - badges;
            int columns = depth.values().stream().mapToInt(d -> d).max().orElse(0);
            List<Double> starts = new ArrayList<>();
            double x = area.x();
            double end = x;
            for (int column = 0; column <= columns; column++) {
                int now = column;
                List<TreeNode> here = scene.nodes().stream()
                        .filter(n -> !n.leaf() && depth.get(n.id()) == now)
                        .toList();
                double wide = here.stream().mapToDouble(this::boxWidth).max().orElse(0);
                starts.add(x);
                for (TreeNode node : here) {
                    boxes.put(
                            node.id(),
                            new Area(x, middles.get(node.id()) - height(node.id()) / 2, wide, height(node.id())));
                }
                if (!here.isEmpty()) {
                    double room = labels(now, false);
                    end = Math.max(end, x + wide + labels(now, true));
                    x += wide + room;
                }
            }
            if (end > leafX) {
                return Optional.empty();
            }
            stretch(leafX - end, starts);
            for (TreeNode node : scene.nodes()) {
                if (node.leaf()) {
                    boxes.put(node.id(), new Area(leafX, middles.get(node.id()) - ROW / 2, leafWidth, ROW));
                }
            }
            return Optional.of(finish(cells, spare));
        }

        /** Spreads half of the free width over the columns, so that the lines are of like length. */
        private void stretch(double free, List<Double> starts) {
            int used = (int)
                    boxes.values().stream().mapToDouble(Area::x).distinct().count();
            double step = Math.min(18, free / (used + 1));
            boxes.replaceAll((id, box) ->
                    new Area(box.x() + step * starts.indexOf(box.x()), box.y(), box.width(), box.height()));
        }

        private long marks(String id) {
            return scene.marks().stream()
                    .filter(mark -> mark.targets().contains(id))
                    .count();
        }

        private double boxWidth(TreeNode node) {
            double badges = marks(node.id()) * BADGE;
            double wide = Lettering.width(node.title(), Lettering.MEDIUM, Weight.BOLD) + badges;
            for (String line : brief ? node.brief() : node.lines()) {
                wide = Math.max(wide, width(line, false));
            }
            return wide + 2 * (MARGIN + BAR);
        }

        /** Room for the labels of the lines that leave a column, to leaves or to others. */
        private double labels(int column, boolean leaves) {
            double room = leaves ? 0 : AIR;
            for (TreeLink link : scene.links()) {
                if (depth.get(link.from()) == column && node(link.to()).leaf() == leaves) {
                    double badges = marks(link.id()) * BADGE;
                    room = Math.max(
                            room,
                            width(brief ? link.brief() : link.label(), false)
                                    + AIR
                                    + (link.fused() ? FUSE : 0)
                                    + badges);
                }
            }
            return room;
        }

        private List<Double> cells() {
            List<Double> widths = new ArrayList<>();
            widths.add(width("unit", true));
            scene.heads().forEach(head -> widths.add(width(head, false)));
            for (TreeNode node : scene.nodes()) {
                if (node.leaf()) {
                    widths.set(0, Math.max(widths.get(0), width(node.title(), true)));
                    for (int i = 0; i < node.lines().size(); i++) {
                        widths.set(
                                i + 1,
                                Math.max(widths.get(i + 1), width(node.lines().get(i), false)));
                    }
                }
            }
            return widths;
        }

        private TreePlaced finish(List<Double> cells, double spare) {
            boxes.replaceAll(
                    (id, box) -> new Area(box.x(), box.y() + Math.min(spare / 2, 20), box.width(), box.height()));
            Map<String, Double> levels = new HashMap<>();
            Map<String, Double> ends = new HashMap<>();
            for (TreeLink link : scene.links()) {
                boolean together = above.get(link.to()).size() > 1;
                Area box = boxes.get(together ? link.from() : link.to());
                levels.put(link.id(), box.centre().y());
                ends.put(link.id(), boxes.get(link.to()).x() - 3.5);
            }
            return new TreePlaced(scene, brief, boxes, levels, ends, cells);
        }
    }
}
