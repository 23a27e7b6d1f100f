package ringout.draw.style;

import static ringout.draw.letter.Lettering.MEDIUM;
import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.SheetInfo;

/** The title block, 180 mm wide, fields by ISO 7200:2004 (from memory) and those a wiring sheet needs besides. */
final class TitleBlockInk {
    static final double WIDTH = 180;
    static final double ROW = 9.5;
    static final double HEIGHT = 4 * ROW;

    private static final double MARGIN = 1.5;
    private static final double CAPTION_MIDDLE = 2.2;
    private static final double VALUE_MIDDLE = 6.6;

    private final List<Ink> ink = new ArrayList<>();
    private final Area area;

    private TitleBlockInk(Area area) {
        this.area = area;
    }

    static Cluster draw(SheetInfo info, SheetSize size, Area area) {
        TitleBlockInk block = new TitleBlockInk(area);
        block.fill(info, size);
        return new Cluster(Tag.of("title-block"), block.ink);
    }

    private void fill(SheetInfo info, SheetSize size) {
        ink.add(Patch.rectangle("", area, Paint.of(Palette.WHITE), Pen.NONE));
        field(0, 0, 60, "legal owner", info.owner(), false);
        field(0, 60, 120, "title", info.title(), true);
        field(1, 0, 50, "document type", info.documentType(), false);
        field(1, 50, 80, "airframe, tail", join(info.aircraft(), info.tail()), true);
        field(1, 130, 50, "state drawn", info.state(), false);
        field(2, 0, 50, "identification number", info.number(), false);
        field(2, 50, 50, "hash of data", info.hash(), false);
        field(2, 100, 22, "revision", info.revision(), false);
        field(2, 122, 33, "date of issue", info.date().map(Object::toString).orElse(""), false);
        field(2, 155, 25, "sheet", info.sheet() + " of " + info.sheets(), true);
        field(3, 0, 50, "drawn by", info.creator(), false);
        field(3, 50, 50, "checked by", info.approver(), false);
        field(3, 100, 33, "open findings here", Integer.toString(info.openFindings()), true);
        field(3, 133, 27, "waivers here", Integer.toString(info.waivers()), true);
        field(3, 160, 20, "size", size.name(), false);
        ink.add(Patch.rectangle("", area, Paint.clear(), Pen.solid(Palette.BLACK, Lines.THICK)));
    }

    private static String join(String aircraft, String tail) {
        return tail.isEmpty() ? aircraft : aircraft + ", " + tail;
    }

    private void field(int row, double left, double width, String caption, String value, boolean strong) {
        Area cell = new Area(area.x() + left, area.y() + row * ROW, width, ROW);
        ink.add(Patch.rectangle("", cell, Paint.clear(), Pen.solid(Palette.BLACK, Lines.THIN)));
        double x = cell.x() + MARGIN;
        ink.add(Print.line(
                caption, x, cell.y() + CAPTION_MIDDLE, Align.START, SMALL, Weight.REGULAR, Palette.DARK_GREY));
        Weight weight = strong ? Weight.BOLD : Weight.REGULAR;
        double room = width - 2 * MARGIN;
        String text = Lettering.printable(value);
        double cap = strong && Lettering.width(text, MEDIUM, weight) <= room ? MEDIUM - 0.5 : SMALL;
        String shown = Lettering.fit(text, cap, weight, room);
        Print.add(ink, Print.line(shown, x, cell.y() + VALUE_MIDDLE, Align.START, cap, weight, Palette.BLACK));
    }
}
