package ringout.draw.style;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.paper.Area;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Remark;
import ringout.draw.scene.SheetInfo;

/**
 * All of a sheet but the drawing itself: frame, title block below on the right, legend beside it, and above both, when
 * there is room, the finding list.
 */
public final class Margins {
    private static final double PADDING = 4;

    private final SheetSize size;
    private final SheetInfo info;
    private final List<LegendEntry> legend;
    private final List<FindingLine> findings;
    private final List<String> notes;
    private final List<Remark> remarks;
    private final Area strip;
    private final Area paragraphs;
    private final Area list;

    /** The margins of a sheet; give no findings and notes to leave the list out. */
    public Margins(
            SheetSize size, SheetInfo info, List<LegendEntry> legend, List<FindingLine> findings, List<String> notes) {
        this(size, info, legend, findings, notes, List.of());
    }

    /**
     * {@return the margins to try in turn, size by size: with the finding list, then without it}
     *
     * @param kept notes that stay when the finding list goes
     */
    public static List<Margins> inTurn(
            List<SheetSize> sizes,
            SheetInfo info,
            List<LegendEntry> legend,
            List<FindingLine> findings,
            List<String> notes,
            List<String> kept) {
        List<Margins> tries = new ArrayList<>();
        for (SheetSize size : sizes) {
            tries.add(new Margins(size, info, legend, findings, notes));
            tries.add(new Margins(size, info, legend, List.of(), kept));
        }
        return tries;
    }

    /** The margins of a sheet with paragraphs below the list. */
    public Margins(
            SheetSize size,
            SheetInfo info,
            List<LegendEntry> legend,
            List<FindingLine> findings,
            List<String> notes,
            List<Remark> remarks) {
        this.size = size;
        this.info = info;
        this.legend = List.copyOf(legend);
        this.findings = List.copyOf(findings);
        this.notes = List.copyOf(notes);
        this.remarks = List.copyOf(remarks);
        Area frame = size.frame();
        double room = frame.width() - TitleBlockInk.WIDTH;
        double height = LegendInk.height(this.legend, room, TitleBlockInk.HEIGHT);
        this.strip = new Area(frame.x(), frame.bottom() - height, frame.width(), height);
        double tall = RemarksInk.height(this.remarks, frame.width());
        this.paragraphs = new Area(frame.x(), strip.y() - tall, frame.width(), tall);
        double listHeight = FindingsInk.height(this.findings, this.notes, frame.width());
        this.list = new Area(frame.x(), paragraphs.y() - listHeight, frame.width(), listHeight);
    }

    /** {@return the same margins with another title block} */
    public Margins titled(SheetInfo newInfo) {
        return new Margins(size, newInfo, legend, findings, notes, remarks);
    }

    /** {@return the title block's content} */
    public SheetInfo info() {
        return info;
    }

    /** {@return the paper} */
    public SheetSize size() {
        return size;
    }

    /** {@return what is left for the drawing; nothing when legend and list fill the sheet} */
    public Area drawing() {
        Area frame = size.frame();
        double height = list.y() - frame.y() - 2 * PADDING;
        double width = height > 0 ? frame.width() - 2 * PADDING : 0;
        return new Area(frame.x() + PADDING, frame.y() + PADDING, width, Math.max(0, height));
    }

    /** {@return the ink of all margins about a drawing; the finding list names the zones of its badges} */
    public List<Ink> draw(List<Ink> drawing) {
        List<Ink> ink = new ArrayList<>();
        ink.add(FrameInk.draw(size));
        Pen pen = Pen.solid(Palette.BLACK, Lines.MEDIUM);
        if (list.height() > 0) {
            ink.add(Patch.rectangle("panel", list, Paint.clear(), pen));
            ink.add(FindingsInk.draw(findings, BadgeZones.of(drawing, size), notes, list));
        }
        if (paragraphs.height() > 0) {
            ink.add(Patch.rectangle("panel", paragraphs, Paint.clear(), pen));
            ink.add(RemarksInk.draw(remarks, paragraphs));
        }
        double left = strip.right() - TitleBlockInk.WIDTH;
        ink.add(Patch.rectangle("panel", strip, Paint.clear(), pen));
        ink.add(LegendInk.draw(legend, new Area(strip.x(), strip.y(), left - strip.x(), strip.height())));
        Area block = new Area(left, strip.bottom() - TitleBlockInk.HEIGHT, TitleBlockInk.WIDTH, TitleBlockInk.HEIGHT);
        ink.add(TitleBlockInk.draw(info, size, block));
        return ink;
    }
}
