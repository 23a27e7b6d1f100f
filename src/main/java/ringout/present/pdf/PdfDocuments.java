package ringout.present.pdf;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.ContentHandler;
import org.xml.sax.SAXException;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.sheet.document.Document;
import ringout.sheet.document.Section;

/**
 * Writes documents into one PDF: a bookmark a document and section; on every page the title, the revision mark, the caution
 * and the number of the page; heads of tables again on each page; no row broken where it fits a page; text that can be
 * searched and copied.
 */
public final class PdfDocuments {
    private static final String LAST = "last";
    private final List<Document> documents;
    private final Paper paper;
    private final List<List<Plate>> plates = new ArrayList<>();

    private PdfDocuments(List<Document> documents, Paper paper) {
        this.documents = documents;
        this.paper = paper;
    }

    /** {@return the file of some documents, at least one} */
    public static PdfFile of(PdfInfo info, List<Document> documents, Paper paper) {
        return PdfEngine.write(info, new PdfDocuments(documents, paper)::write);
    }

    private void write(ContentHandler objects) throws SAXException {
        FoWriter fo = new FoWriter(objects);
        fo.open(
                "root",
                "font-family",
                PdfEngine.FAMILY,
                "font-size",
                FoWriter.mm(Lettering.emOf(Lettering.SMALL)),
                "line-height",
                Double.toString(PageForm.LEADING),
                "xml:lang",
                "en");
        fo.open("layout-master-set");
        for (int i = 0; i < documents.size(); i++) {
            if (drawn(documents.get(i))) {
                List<Plate> all = plates(documents.get(i));
                for (int s = 0; s < all.size(); s++) {
                    all.get(s).master(fo, master(i) + "-" + s);
                }
                plates.add(all);
            } else {
                PageForm.of(documents.get(i), paper).master(fo, master(i));
                plates.add(List.of());
            }
        }
        fo.close();
        bookmarks(fo);
        for (int i = 0; i < documents.size(); i++) {
            if (plates.get(i).isEmpty()) {
                pages(fo, i);
            } else {
                drawings(fo, i);
            }
        }
        fo.close().end();
    }

    private static boolean drawn(Document document) {
        return document.form() == Document.Form.DRAWINGS && !document.figures().isEmpty();
    }

    private static List<Plate> plates(Document document) {
        return document.figures().stream().map(Plate::of).toList();
    }

    private void drawings(FoWriter fo, int number) throws SAXException {
        List<Plate> all = plates.get(number);
        for (int s = 0; s < all.size(); s++) {
            fo.open("page-sequence", "master-reference", master(number) + "-" + s);
            fo.open("flow", "flow-name", "xsl-region-body");
            fo.open("block", "font-size", "0", "line-height", "0");
            if (s == 0) {
                fo.empty("block", "id", "d" + number);
            }
            fo.empty("block", "id", anchor(number, s)).close();
            all.get(s).page(fo, documents.get(number), LAST);
            last(fo, number);
            fo.close().close();
        }
    }

    private void last(FoWriter fo, int number) throws SAXException {
        if (number == documents.size() - 1) {
            fo.empty("block", "id", LAST);
        }
    }

    private static String master(int document) {
        return "pages-" + document;
    }

    private static String anchor(int document, int section) {
        return "d" + document + "s" + section;
    }

    private void bookmarks(FoWriter fo) throws SAXException {
        fo.open("bookmark-tree");
        for (int i = 0; i < documents.size(); i++) {
            Document document = documents.get(i);
            fo.open("bookmark", "internal-destination", "d" + i, "starting-state", "hide");
            fo.element("bookmark-title", Lettering.printable(document.title()));
            for (int s = 0; s < document.sections().size(); s++) {
                String title = document.sections().get(s).title();
                if (!title.isEmpty()) {
                    fo.open("bookmark", "internal-destination", anchor(i, s));
                    fo.element("bookmark-title", Lettering.printable(title)).close();
                }
            }
            fo.close();
        }
        fo.close();
    }

    private void pages(FoWriter fo, int number) throws SAXException {
        Document document = documents.get(number);
        PageForm form = PageForm.of(document, paper);
        fo.open("page-sequence", "master-reference", master(number), "id", "d" + number);
        fo.open("static-content", "flow-name", "xsl-region-before");
        head(fo, document, form);
        fo.close();
        fo.open("static-content", "flow-name", "xsl-region-after");
        foot(fo, document, form);
        fo.close();
        fo.open("flow", "flow-name", "xsl-region-body");
        BlockFo blocks = new BlockFo(fo, form.text());
        for (int s = 0; s < document.sections().size(); s++) {
            Section section = document.sections().get(s);
            fo.open("block", "id", anchor(number, s));
            blocks.section(section);
            fo.close();
        }
        last(fo, number);
        fo.close().close();
    }

    private static void head(FoWriter fo, Document document, PageForm form) throws SAXException {
        String sheet = "sheet " + document.sheet() + " of " + document.of();
        double right = Lettering.width(sheet, Lettering.SMALL, Weight.REGULAR) + 3;
        fo.open("block", "border-bottom", "0.35mm solid black", "padding-bottom", "1mm");
        row(fo, form.text() - right, right);
        fo.element(
                "block",
                Lettering.fit(
                        Lettering.printable(document.title()), Lettering.MEDIUM, Weight.BOLD, form.text() - right - 2),
                "font-weight",
                "bold",
                "font-size",
                FoWriter.mm(Lettering.emOf(Lettering.MEDIUM)));
        fo.close().open("table-cell", "text-align", "end", "display-align", "after");
        fo.element("block", sheet);
        fo.close().close().close().close();
        fo.element(
                "block",
                Lettering.fit(
                        Lettering.printable(document.mark().words()), Lettering.SMALL, Weight.REGULAR, form.text()));
        fo.close();
    }

    private static void foot(FoWriter fo, Document document, PageForm form) throws SAXException {
        if (!document.foot().isEmpty()) {
            fo.element(
                    "block",
                    LongWords.broken(document.foot(), Lettering.SMALL, Weight.BOLD, form.text()),
                    "font-weight",
                    "bold",
                    "padding-bottom",
                    "1mm");
        }
        double right = 45;
        fo.open("block", "border-top", "0.35mm solid black", "padding-top", "1mm");
        row(fo, form.text() - right, right);
        fo.element(
                "block",
                Lettering.fit(
                        Lettering.printable(document.mark().footWords()),
                        Lettering.SMALL,
                        Weight.REGULAR,
                        form.text() - right - 2));
        fo.close().open("table-cell", "text-align", "end");
        fo.open("block").text("page ").empty("page-number").text(" of ");
        fo.empty("page-number-citation", "ref-id", LAST).close();
        fo.close().close().close().close().close();
    }

    /** Starts a table of one row of two cells, and the first of them. */
    private static void row(FoWriter fo, double left, double right) throws SAXException {
        fo.open("table", "table-layout", "fixed", "width", "100%");
        fo.empty("table-column", "column-width", FoWriter.mm(left));
        fo.empty("table-column", "column-width", FoWriter.mm(right));
        fo.open("table-body").open("table-row").open("table-cell");
    }
}
