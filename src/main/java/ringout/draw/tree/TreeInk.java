package ringout.draw.tree;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.draw.form.BadgeForm;
import ringout.draw.form.BadgeIndex;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.Mark;
import ringout.draw.style.Badges;
import ringout.draw.style.Hatchings;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** The ink of a tree. */
@SuppressWarnings("NullAway") // every key asked for is an id of the same scene, which was placed before
final class TreeInk {
    private final TreePlaced placed;
    private final TreeScene scene;
    private final BadgeIndex badges;
    private final Map<String, BadgeKind> worst = new HashMap<>();

    TreeInk(TreePlaced placed) {
        this.placed = placed;
        this.scene = placed.scene();
        this.badges = new BadgeIndex(scene.marks());
        for (Mark mark : scene.marks()) {
            for (String target : mark.targets()) {
                if (!mark.waived() && mark.kind().hasCasing()) {
                    worst.merge(target, mark.kind(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
                }
            }
        }
    }

    /** {@return the name of the side of a node that lines leave from} */
    static String out(String node) {
        return node + " out";
    }

    /** {@return the name of the side of a node that lines come to} */
    static String in(String node) {
        return node + " in";
    }

    static Pen pen(Girth girth) {
        return girth == Girth.SUPPLY
                ? Pen.solid(Palette.VERMILION, girth.millimetres())
                : Pen.dashed(Palette.BLACK, girth.millimetres(), 7.0, 1.2 + girth.millimetres() / 2);
    }

    List<Ink> draw() {
        List<Ink> ink = new ArrayList<>();
        scene.nodes().forEach(node -> addBand(ink, node));
        scene.links().forEach(link -> addCasing(ink, link));
        scene.nodes().forEach(node -> ink.add(node.leaf() ? row(node) : box(node)));
        scene.nodes().forEach(node -> addSides(ink, node));
        scene.links().forEach(link -> ink.add(line(link)));
        scene.links().forEach(link -> addLabel(ink, link));
        addHeads(ink);
        return ink;
    }

    private void addBand(List<Ink> ink, TreeNode node) {
        Optional.ofNullable(worst.get(node.id())).ifPresent(kind -> {
            Pen pen = new Pen(Paint.of(Hatchings.of(kind)), Lines.BAND, List.of(), false);
            Tag tag = Tag.of("casing").with("severity", kind.word()).with("target", node.id());
            Area area = placed.boxes().get(node.id()).grown(node.leaf() ? 0.2 : Lines.BAND / 2);
            ink.add(new Patch(tag, new Patch.Rectangle(area), Paint.clear(), pen));
        });
    }

    private void addCasing(List<Ink> ink, TreeLink link) {
        Optional.ofNullable(worst.get(link.id())).ifPresent(kind -> {
            Tag tag = Tag.of("casing").with("severity", kind.word()).with("target", link.id());
            double wide = Math.max(Lines.CASING, 3 * link.girth().millimetres());
            ink.add(new Stroke(tag, way(link), new Pen(Paint.of(Hatchings.of(kind)), wide, List.of(), false)));
        });
    }

    private List<Point> way(TreeLink link) {
        double y = placed.levels().get(link.id());
        Area from = placed.boxes().get(link.from());
        return List.of(
                new Point(from.right(), y),
                new Point(placed.boxes().get(link.to()).x(), y));
    }

    private Ink line(TreeLink link) {
        List<Ink> ink = new ArrayList<>();
        List<Point> way = way(link);
        ink.add(new Stroke(Tag.of("line"), way, pen(link.girth())));
        if (link.fused()) {
            ink.addAll(fuse(way.get(0).plus(5.5, 0), link.girth()));
        }
        Tag tag = Tag.of("wire")
                .withId("wire", link.id())
                .with("wire", link.id())
                .with("kind", link.girth() == Girth.SUPPLY ? "supply" : "return")
                .with("from", out(link.from()))
                .with("to", in(link.to()));
        return new Cluster(tag.titled(link.label(), ""), ink);
    }

    static List<Ink> fuse(Point middle, Girth girth) {
        Area body = new Area(middle.x() - 3, middle.y() - 1.1, 6, 2.2);
        List<Point> through = List.of(middle.plus(-3, 0), middle.plus(3, 0));
        return List.of(
                Patch.rectangle("fuse", body, Paint.of(Palette.WHITE), Pen.solid(Palette.BLACK, Lines.STRONG)),
                new Stroke(Tag.of("through"), through, Pen.solid(Palette.BLACK, Math.min(0.35, girth.millimetres()))));
    }

    /** The label before the end of its line, badges before the label. */
    private void addLabel(List<Ink> ink, TreeLink link) {
        double y = placed.levels().get(link.id());
        double end = placed.labelEnd().get(link.id());
        String text = placed.label(link);
        List<Ink> label = new ArrayList<>();
        Print.addInGap(label, Print.small(text, end, y, Align.END));
        ink.add(new Cluster(Tag.of("label").with("wire", link.id()), label));
        double x = end - TreePlaced.width(text, false) - 1.2;
        for (BadgeForm badge : badges.of(link.id())) {
            ink.add(Badges.draw(badge, new Point(x - badge.width() / 2, y), link.id()));
            x -= badge.width() + BadgeForm.GAP;
        }
    }

    private Ink box(TreeNode node) {
        Area box = placed.boxes().get(node.id());
        List<Ink> ink = new ArrayList<>();
        ink.add(Patch.rectangle("body", box, Paint.of(Palette.WHITE), Pen.solid(Palette.BLACK, Lines.STRONG)));
        Area head = new Area(box.x(), box.y(), box.width(), TreePlaced.HEAD).grown(-0.35);
        ink.add(Patch.rectangle("head", head, Paint.of(Palette.PALE), Pen.NONE));
        double x = box.x() + TreePlaced.BAR + TreePlaced.MARGIN;
        double y = box.y() + TreePlaced.HEAD / 2 + 0.1;
        Print.add(ink, Print.line(node.title(), x, y, Align.START, Lettering.MEDIUM, Weight.BOLD, Palette.BLACK));
        double end = box.right() - TreePlaced.BAR - BadgeForm.GAP;
        for (BadgeForm badge : badges.of(node.id())) {
            ink.add(Badges.draw(badge, new Point(end - badge.width() / 2, y), node.id()));
            end -= badge.width() + BadgeForm.GAP;
        }
        double top = box.y() + TreePlaced.HEAD;
        for (String line : placed.lines(node)) {
            Print.add(ink, Print.small(line, x, top + TreePlaced.LINE / 2, Align.START));
            top += TreePlaced.LINE;
        }
        double meterTop = top;
        node.share()
                .ifPresent(share -> ink.addAll(meter(
                        new Area(x, meterTop + 0.6, box.width() - 2 * (TreePlaced.MARGIN + TreePlaced.BAR), 3.4),
                        share)));
        return new Cluster(tag(node), ink);
    }

    private static Tag tag(TreeNode node) {
        Tag tag =
                Tag.of("unit").withId("unit", node.id()).with("unit", node.id()).with(node.kind(), node.title());
        return tag.titled(node.kind() + " " + node.title(), String.join(", ", node.lines()));
    }

    /** Two bars in a frame: what part of a rating the average and the peak use. */
    static List<Ink> meter(Area frame, TreeNode.Share share) {
        List<Ink> ink = new ArrayList<>();
        Pen edge = Pen.solid(Palette.BLACK, Lines.THIN);
        ink.add(Patch.rectangle("meter", frame, Paint.of(Palette.WHITE), edge));
        double half = frame.height() / 2;
        addBar(ink, frame, frame.y(), half, share.average(), Palette.BLACK);
        addBar(ink, frame, frame.y() + half, half, share.peak(), Palette.VERMILION);
        return ink;
    }

    private static void addBar(List<Ink> ink, Area frame, double y, double height, double part, String colour) {
        double wide = frame.width() * Math.max(0, Math.min(1, part));
        if (wide > 0) {
            ink.add(Patch.rectangle("used", new Area(frame.x(), y, wide, height), Paint.of(colour), Pen.NONE));
        }
    }

    private Ink row(TreeNode node) {
        Area box = placed.boxes().get(node.id());
        List<Ink> ink = new ArrayList<>();
        ink.add(Patch.rectangle("body", box, Paint.of(Palette.WHITE), Pen.solid(Palette.BLACK, Lines.MEDIUM)));
        double y = box.centre().y();
        double x = box.x() + 2 * TreePlaced.MARGIN;
        Print.add(ink, Print.bold(node.title(), x, y, Align.START));
        x += placed.cellWidths().get(0);
        for (int i = 0; i < node.lines().size(); i++) {
            x += 2 * TreePlaced.MARGIN + placed.cellWidths().get(i + 1);
            Print.add(ink, Print.small(node.lines().get(i), x, y, Align.END));
        }
        double start = box.right() + 1;
        for (BadgeForm badge : badges.of(node.id())) {
            ink.add(Badges.draw(badge, new Point(start + badge.width() / 2, y), node.id()));
            start += badge.width() + BadgeForm.GAP;
        }
        return new Cluster(tag(node), ink);
    }

    /** The bars at the sides of a node, as tall as the lines that come to it need. */
    private void addSides(List<Ink> ink, TreeNode node) {
        Area box = placed.boxes().get(node.id());
        List<Double> left = scene.links().stream()
                .filter(link -> link.to().equals(node.id()))
                .map(link -> placed.levels().get(link.id()))
                .toList();
        List<Double> right = scene.links().stream()
                .filter(link -> link.from().equals(node.id()))
                .map(link -> placed.levels().get(link.id()))
                .toList();
        if (!left.isEmpty()) {
            ink.add(side(in(node.id()), box.x(), box, left, left.size() > 1));
        }
        if (!right.isEmpty()) {
            ink.add(side(out(node.id()), box.right() - TreePlaced.BAR, box, right, true));
        }
    }

    private static Ink side(String id, double x, Area box, List<Double> levels, boolean bar) {
        double top = levels.stream().mapToDouble(y -> y).min().orElse(box.y()) - 1.5;
        double bottom = levels.stream().mapToDouble(y -> y).max().orElse(box.bottom()) + 1.5;
        Area area = bar
                ? Area.between(x, Math.min(top, box.y()), x + TreePlaced.BAR, Math.max(bottom, box.bottom()))
                : new Area(x, top, 0.5, 3);
        Patch cell = Patch.rectangle("cell", area, Paint.of(Palette.BLACK), Pen.solid(Palette.BLACK, Lines.THIN));
        return new Cluster(Tag.of("pin").withId("pin", id).with("pin", id), List.of(cell));
    }

    private void addHeads(List<Ink> ink) {
        Optional<TreeNode> first = scene.nodes().stream().filter(TreeNode::leaf).findFirst();
        double top = scene.nodes().stream()
                .filter(TreeNode::leaf)
                .mapToDouble(node -> placed.boxes().get(node.id()).y())
                .min()
                .orElse(0);
        first.ifPresent(leaf -> {
            double x = placed.boxes().get(leaf.id()).x()
                    + 2 * TreePlaced.MARGIN
                    + placed.cellWidths().get(0);
            for (int i = 0; i < scene.heads().size(); i++) {
                x += 2 * TreePlaced.MARGIN + placed.cellWidths().get(i + 1);
                Print.add(ink, Print.small(scene.heads().get(i), x, top - 2.7, Align.END));
            }
        });
    }
}
