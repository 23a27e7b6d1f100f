package ringout.draw.style;

import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Cluster;
import ringout.draw.ink.Ink;
import ringout.draw.ink.Tag;
import ringout.draw.ink.Words.Align;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.paper.Area;
import ringout.draw.scene.Remark;

/** Paragraphs below a drawing: a bold word, and the text beside it in as many lines as it needs. */
final class RemarksInk {
    private static final double LINE = 4.1;
    private static final double MARGIN = 2;
    private static final double HEADS = 20;
    private static final double FOOT = 2;
    private static final int MOST = 12;

    private RemarksInk() {}

    private static List<String> lines(Remark remark, double width) {
        String text = Lettering.printable(remark.text());
        return Lettering.wrap(text, SMALL, Weight.REGULAR, width - 2 * MARGIN - HEADS, MOST);
    }

    /** {@return the height the paragraphs need, mm; 0 when there are none} */
    static double height(List<Remark> remarks, double width) {
        int lines =
                remarks.stream().mapToInt(remark -> lines(remark, width).size()).sum();
        return lines == 0 ? 0 : lines * LINE + FOOT;
    }

    static Cluster draw(List<Remark> remarks, Area area) {
        List<Ink> ink = new ArrayList<>();
        double y = area.y() + FOOT / 2 + LINE / 2;
        for (Remark remark : remarks) {
            List<Ink> parts = new ArrayList<>();
            Print.add(parts, Print.bold(remark.head(), area.x() + MARGIN, y, Align.START));
            for (String line : lines(remark, area.width())) {
                Print.add(parts, Print.small(line, area.x() + MARGIN + HEADS, y, Align.START));
                y += LINE;
            }
            ink.add(new Cluster(Tag.of("remark").with("head", remark.head()), parts));
        }
        return new Cluster(Tag.of("remarks"), ink);
    }
}
