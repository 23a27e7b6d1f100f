package ringout.present.pdf;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.xml.sax.ContentHandler;
import org.xml.sax.SAXException;
import ringout.draw.letter.Lettering;
import ringout.draw.paper.SheetSize;
import ringout.present.svg.SvgOutcome;

/**
 * Writes verified sheets into one PDF: a page a sheet in its own size, a bookmark each, vectors and text as in the SVG. The
 * number in the title block is the number of the page when the whole set is written.
 */
public final class PdfSheets {
    /**
     * A sheet of the file.
     *
     * @param title its bookmark
     * @param size of its page
     * @param svg what is drawn on it
     */
    public record Page(String title, SheetSize size, SvgOutcome.Verified svg) {}

    private final List<Page> pages;

    private PdfSheets(List<Page> pages) {
        this.pages = List.copyOf(pages);
    }

    /** {@return the file of some sheets, at least one} */
    public static PdfFile of(PdfInfo info, List<Page> pages) {
        return PdfEngine.write(info, new PdfSheets(pages)::write);
    }

    private void write(ContentHandler objects) throws SAXException {
        FoWriter fo = new FoWriter(objects);
        fo.open("root", "font-family", PdfEngine.FAMILY, "font-size", "1mm", "line-height", "1", "xml:lang", "en");
        masters(fo);
        fo.open("bookmark-tree");
        for (int i = 0; i < pages.size(); i++) {
            fo.open("bookmark", "internal-destination", anchor(i));
            fo.element("bookmark-title", Lettering.printable(pages.get(i).title()));
            fo.close();
        }
        fo.close();
        for (int i = 0; i < pages.size(); i++) {
            page(fo, i);
        }
        fo.close().end();
    }

    private void masters(FoWriter fo) throws SAXException {
        Set<SheetSize> sizes = new TreeSet<>();
        pages.forEach(page -> sizes.add(page.size()));
        fo.open("layout-master-set");
        for (SheetSize size : sizes) {
            fo.open(
                    "simple-page-master",
                    "master-name",
                    size.name(),
                    "page-width",
                    FoWriter.mm(size.width()),
                    "page-height",
                    FoWriter.mm(size.height()));
            fo.empty("region-body").close();
        }
        fo.close();
    }

    private static String anchor(int page) {
        return "sheet-" + (page + 1);
    }

    private void page(FoWriter fo, int number) throws SAXException {
        Page page = pages.get(number);
        fo.open("page-sequence", "master-reference", page.size().name(), "id", anchor(number));
        fo.open("flow", "flow-name", "xsl-region-body");
        Plate.drawing(fo, page.svg().text(), page.size().width(), page.size().height());
        fo.empty("block").close().close();
    }
}
