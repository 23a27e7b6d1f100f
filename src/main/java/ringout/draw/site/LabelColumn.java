package ringout.draw.site;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ringout.draw.form.BadgeForm;
import ringout.draw.form.BadgeIndex;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.spacing.Spread;
import ringout.draw.style.Badges;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;
import ringout.draw.style.Print;

/** Labels one below the other beside a view, each with a line to its thing; so that no label lies on another. */
final class LabelColumn {
    private static final double HEIGHT = 4.2;
    private static final double GAP = 0.2;
    private static final double LEADER = 6;
    private static final double SAME = 0.3;
    private static final Pen THIN = Pen.solid(Palette.DARK_GREY, Lines.THIN);

    private final List<Label> labels = new ArrayList<>();
    private final BadgeIndex badges;

    /** A label and what it points to. */
    private record Label(String id, List<String> things, String words, Point at) {}

    LabelColumn(BadgeIndex badges) {
        this.badges = badges;
    }

    /** Adds a label: of what, as which thing of the sheet, its words, where it is. What lies on one point shares a label. */
    void add(String id, String thing, String words, Point at) {
        for (int i = 0; i < labels.size(); i++) {
            Label other = labels.get(i);
            if (other.at().distance(at) < SAME && bare(id, words) && bare(other.id(), other.words())) {
                List<String> things = new ArrayList<>(other.things());
                things.add(thing);
                labels.set(i, new Label(other.id(), things, other.words() + " " + words, other.at()));
                return;
            }
        }
        labels.add(new Label(id, List.of(thing), words, at));
    }

    /** Whether a label may be joined with others: a name without badge and explanation. */
    private boolean bare(String id, String words) {
        return badges.of(id).isEmpty() && words.indexOf(':') < 0;
    }

    private double height(Label label) {
        return badges.of(label.id()).isEmpty() ? HEIGHT : BadgeForm.HEIGHT + 0.4;
    }

    /** The labels in an area; on its left edge the lines arrive, or on its right edge. */
    Optional<List<Ink>> draw(Area area, boolean linesFromLeft) {
        labels.sort(Comparator.comparingDouble((Label label) -> label.at().y())
                .thenComparingDouble(
                        label -> linesFromLeft ? label.at().x() : -label.at().x())
                .thenComparing(Label::id));
        List<Double> heights = labels.stream().map(this::height).toList();
        double all = heights.stream().mapToDouble(height -> height + GAP).sum();
        if (all > area.height()) {
            return Optional.empty();
        }
        Spread spread =
                Spread.of(labels.stream().map(label -> label.at().y()).toList(), heights, GAP, area.y(), area.bottom());
        List<Ink> ink = new ArrayList<>();
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            double y = spread.middle(i);
            double edge = linesFromLeft ? area.x() : area.right();
            double out = linesFromLeft ? 1 : -1;
            List<Point> line = List.of(label.at(), new Point(edge - out * LEADER, y), new Point(edge, y));
            ink.add(new Stroke(Tag.of("leader"), line, THIN));
            ink.add(draw(label, edge + out * 0.8, y, out, area.width() - 1.6));
        }
        return Optional.of(ink);
    }

    private Ink draw(Label label, double edge, double y, double out, double room) {
        List<Ink> ink = new ArrayList<>();
        double x = edge;
        for (BadgeForm badge : badges.of(label.id())) {
            ink.add(Badges.draw(badge, new Point(x + out * badge.width() / 2, y), label.id()));
            x += out * (badge.width() + BadgeForm.GAP);
        }
        double left = room - Math.abs(x - edge);
        String words = Lettering.fit(label.words(), Lettering.SMALL, Weight.REGULAR, left);
        Print.add(ink, Print.small(words, x, y, out > 0 ? Align.START : Align.END));
        Cluster cluster = new Cluster(Tag.of("label-words").titled(label.words(), ""), ink);
        for (String thing : label.things()) {
            cluster = new Cluster(Tag.of("place-label").with("thing", thing), List.of(cluster));
        }
        return cluster;
    }
}
