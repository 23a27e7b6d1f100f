package ringout.present.pdf;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.xml.sax.SAXException;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.sheet.document.Document;
import ringout.sheet.document.Figure;

/**
 * A drawing that fills a page of its own size. What ties the page to its pack stands in the margin at the left, outside the
 * frame, which is left for filing (ISO 5457, from memory), and reads from the right.
 *
 * @param svg the drawing
 * @param wide width of the page in mm
 * @param high height of the page in mm
 */
record Plate(String svg, double wide, double high) {
    private static final Pattern SIZE = Pattern.compile("<svg[^>]* width=\"([0-9.]+)mm\" height=\"([0-9.]+)mm\"");
    private static final String NUMBERS = ", 9999 of 9999";
    private static final double LEFT = 6;
    private static final double END = 12;

    static Plate of(Figure figure) {
        String svg = figure.svg().get();
        Matcher size = SIZE.matcher(svg);
        if (!size.find()) {
            throw new IllegalArgumentException("a drawing without a size: " + figure.title());
        }
        return new Plate(svg, Double.parseDouble(size.group(1)), Double.parseDouble(size.group(2)));
    }

    void master(FoWriter fo, String name) throws SAXException {
        fo.open(
                "simple-page-master",
                "master-name",
                name,
                "page-width",
                FoWriter.mm(wide),
                "page-height",
                FoWriter.mm(high));
        fo.empty("region-body").close();
    }

    /** The page; its last words are written by the caller, who knows which page is the last. */
    void page(FoWriter fo, Document document, String last) throws SAXException {
        drawing(fo, svg, wide, high);
        double room = high - 2 * END;
        // Width and height are those of the turned text.
        container(fo, LEFT, END, room, 2 * PageForm.line(), "90");
        String place = "sheet " + document.sheet() + " of " + document.of() + ", page ";
        double pages = Lettering.width(place + NUMBERS, Lettering.SMALL, Weight.REGULAR);
        String mark = Lettering.fit(
                Lettering.printable(document.mark().words()), Lettering.SMALL, Weight.REGULAR, room - pages);
        fo.open("block").text(mark + ", " + place).empty("page-number").text(" of ");
        fo.empty("page-number-citation", "ref-id", last).close();
        fo.element(
                "block",
                Lettering.fit(Lettering.printable(document.foot()), Lettering.SMALL, Weight.BOLD, room - END),
                "font-weight",
                "bold");
        fo.close();
    }

    /** A drawing over a whole page: not in its flow, which could make it a second page by a rounded hair. */
    static void drawing(FoWriter fo, String svg, double wide, double high) throws SAXException {
        container(fo, 0, 0, wide, high, "0");
        fo.open("block", "line-height", "0", "font-size", "0");
        fo.open(
                "instream-foreign-object",
                "content-width",
                FoWriter.mm(wide),
                "content-height",
                FoWriter.mm(high),
                "scaling",
                "uniform");
        fo.drawing(svg).close().close().close();
    }

    private static void container(FoWriter fo, double left, double top, double width, double height, String turned)
            throws SAXException {
        fo.open(
                "block-container",
                "absolute-position",
                "fixed",
                "left",
                FoWriter.mm(left),
                "top",
                FoWriter.mm(top),
                "width",
                FoWriter.mm(width),
                "height",
                FoWriter.mm(height),
                "reference-orientation",
                turned,
                "overflow",
                "visible");
    }
}
