package ringout.draw.lead;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Stroke;
import ringout.draw.ink.Tag;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Presence;
import ringout.draw.style.FittingInk;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;

/** What the legend of a lead drawing must explain. */
final class LeadLegend {
    private LeadLegend() {}

    static List<LegendEntry> of(LeadCard card) {
        List<LegendEntry> entries = new ArrayList<>();
        entries.add(low(
                card.kind().words(),
                p -> LineInk.draw(List.of(p, p.plus(LegendEntry.SAMPLE, 0)), Lines.of(card.kind()), Presence.FITTED)));
        entries.add(low("datum: lengths count from here", LeadLegend::datum));
        if (!card.cover().sleeve().isEmpty()) {
            entries.add(low("sleeve", LeadLegend::sleeve));
        }
        if (card.cover().shield()) {
            entries.add(low("shield", LeadLegend::shield));
        }
        if (card.fuse().isPresent()) {
            entries.add(low(
                    "fuse",
                    p -> FittingInk.draw(
                            new Fitting("", Fitting.Symbol.FUSE, "", Presence.FITTED),
                            p.plus(LegendEntry.SAMPLE / 2, 0))));
        }
        return entries;
    }

    private static LegendEntry low(String words, java.util.function.Function<Point, List<Ink>> sample) {
        return new LegendEntry(words, LegendEntry.LOW, sample);
    }

    private static List<Ink> datum(Point p) {
        Point tip = p.plus(5, 0);
        List<Point> corners = List.of(tip, tip.plus(2.4, -1.2), tip.plus(2.4, 1.2));
        Pen thin = Pen.solid(Palette.BLACK, Lines.THIN);
        return List.of(
                new Stroke(Tag.NONE, List.of(tip, tip.plus(10, 0)), thin),
                new Stroke(Tag.NONE, List.of(tip.plus(0, -1.8), tip.plus(0, 1.8)), thin),
                Patch.polygon("", corners, Paint.of(Palette.BLACK), Pen.NONE));
    }

    private static List<Ink> sleeve(Point p) {
        Area area = new Area(p.x() + 2, p.y() - 1.7, 16, 3.4);
        return List.of(
                Patch.rectangle("", area, Paint.of(Palette.LIGHT_GREY), Pen.solid(Palette.DARK_GREY, Lines.THIN)));
    }

    private static List<Ink> shield(Point p) {
        Area area = new Area(p.x() + 2, p.y() - 1.9, 16, 3.8);
        return List.of(Patch.rectangle("", area, Paint.clear(), Pen.dashed(Palette.BLACK, Lines.MEDIUM, 2.0, 1.2)));
    }
}
