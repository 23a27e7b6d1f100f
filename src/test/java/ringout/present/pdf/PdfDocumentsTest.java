package ringout.present.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Figure;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Section;
import ringout.sheet.document.SignOff;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** Documents as PDF, read back with a library that had no part in writing them. */
class PdfDocumentsTest {
    private static final PdfInfo INFO = new PdfInfo("Pack of Ex-1", "data 1a2b3c4d", "ringout test");
    private static final RevisionMark MARK = new RevisionMark("Ex-1 Example", "03", "C", "5", "as flown", "1a2b3c4d");
    private static final String FOOT = "propellers off before any pack is plugged";

    private static Document document(String title, Document.Form form, Section... sections) {
        return new Document("any", title, MARK, 1, 1, form, FOOT, List.of(sections));
    }

    private static Table table(int rows, String hostile) {
        TableBuilder table = Table.named(
                        "any",
                        Column.text("conductor"),
                        Column.number("length", "mm"),
                        Column.writeIn("reading", "ohm", 22),
                        Column.tick("seen"),
                        Column.text("note"))
                .by("plug");
        for (int i = 0; i < rows; i++) {
            if (i % 10 == 0) {
                table.group("FC-P" + i);
            }
            table.row("W" + i, Integer.toString(i * 10), "", "", i == 3 ? hostile : "row " + i + " whole");
        }
        return table.table();
    }

    private static PDDocument read(Document... documents) throws IOException {
        PdfFile file = PdfDocuments.of(INFO, List.of(documents), Paper.A4);
        assertEquals(List.of(), file.flaws());
        return Loader.loadPDF(file.bytes());
    }

    @Test
    void everyPageCarriesTitleMarkCautionAndItsNumber() throws IOException {
        try (PDDocument pdf =
                read(document("Wire list", Document.Form.LANDSCAPE, new Section("", List.of(table(90, "x")))))) {
            assertTrue(pdf.getNumberOfPages() >= 3);
            PDFTextStripper text = new PDFTextStripper();
            for (int page = 1; page <= pdf.getNumberOfPages(); page++) {
                text.setStartPage(page);
                text.setEndPage(page);
                String seen = text.getText(pdf);
                assertTrue(seen.contains("Wire list"), seen);
                assertTrue(seen.contains(MARK.words()), seen);
                assertTrue(seen.contains(FOOT), seen);
                assertTrue(seen.contains("page " + page + " of " + pdf.getNumberOfPages()), seen);
                assertTrue(seen.contains("conductor"), "the head of the table stands on every page: " + seen);
            }
        }
    }

    @Test
    void theTextCanBeCopiedAndItsFontsAreEmbedded() throws IOException {
        try (PDDocument pdf = read(document(
                "Ring-out sheet",
                Document.Form.PORTRAIT,
                new Section(
                        "What to do",
                        List.of(
                                new Paragraph("one conductor a line"),
                                new Caution(List.of("packs out")),
                                new KeyValues(List.of(new KeyValues.Pair("tail", "03"))),
                                table(5, "\u03A9 \u00E4")))))) {
            String seen = new PDFTextStripper().getText(pdf);
            for (String words : List.of(
                    "What to do", "one conductor a line", "CAUTION", "packs out", "row 4 whole", "\u03A9 \u00E4")) {
                assertTrue(seen.contains(words), words + " in " + seen);
            }
            List<String> fonts = new ArrayList<>();
            for (PDPage page : pdf.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertTrue(font.isEmbedded(), font.getName());
                    fonts.add(font.getName());
                }
            }
            assertFalse(fonts.isEmpty());
        }
    }

    @Test
    void bookmarksLeadToDocumentsAndSections() throws IOException {
        Document first = document("First", Document.Form.PORTRAIT, new Section("A part", List.of(new Paragraph("a"))));
        Document second = document("Second", Document.Form.LANDSCAPE, new Section("", List.of(new Paragraph("b"))));
        try (PDDocument pdf = read(first, second)) {
            List<String> seen = new ArrayList<>();
            for (PDOutlineItem item :
                    pdf.getDocumentCatalog().getDocumentOutline().children()) {
                int page = pdf.getPages().indexOf(item.findDestinationPage(pdf));
                seen.add(item.getTitle() + " " + page);
                item.children().forEach(inner -> seen.add("  " + inner.getTitle()));
            }
            assertEquals(List.of("First 0", "  A part", "Second 1"), seen);
            PDRectangle flat = pdf.getPage(1).getMediaBox();
            assertEquals(297, flat.getWidth() / 72 * 25.4, 0.1);
            assertEquals(210, flat.getHeight() / 72 * 25.4, 0.1);
        }
    }

    @Test
    void aDrawingFillsAPageOfItsOwnSizeWithTheMarkInItsMargin() throws IOException {
        String svg =
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"420mm\" height=\"297mm\" viewBox=\"0 0 420 297\">"
                        + "<text x=\"200\" y=\"150\" font-family=\"'DejaVu Sans Condensed'\" font-size=\"5\">lead W65</text></svg>";
        Document drawings = document(
                "Lead drawings",
                Document.Form.DRAWINGS,
                new Section("leads W01", List.of(new Figure("leads W01", () -> svg))),
                new Section("leads W65", List.of(new Figure("leads W65", () -> svg))));
        Document text = document("Second", Document.Form.PORTRAIT, new Section("", List.of(new Paragraph("b"))));
        try (PDDocument pdf = read(drawings, text)) {
            assertEquals(3, pdf.getNumberOfPages());
            for (int page = 0; page < 2; page++) {
                PDRectangle box = pdf.getPage(page).getMediaBox();
                assertEquals(420, box.getWidth() / 72 * 25.4, 0.1);
                assertEquals(297, box.getHeight() / 72 * 25.4, 0.1);
                PDFTextStripper eye = new PDFTextStripper();
                eye.setStartPage(page + 1);
                eye.setEndPage(page + 1);
                String seen = eye.getText(pdf).replaceAll("\\s", "");
                assertTrue(seen.contains("leadW65"), seen);
                assertTrue(seen.contains("1a2b3c4d"), seen);
                assertTrue(seen.contains("page" + (page + 1) + "of3"), seen);
                assertTrue(seen.contains("propellersoff"), seen);
            }
            List<String> marks = new ArrayList<>();
            for (PDOutlineItem item :
                    pdf.getDocumentCatalog().getDocumentOutline().children()) {
                item.children().forEach(inner -> marks.add(inner.getTitle()));
            }
            assertEquals(List.of("leads W01", "leads W65"), marks);
        }
    }

    @Test
    void nothingLeavesThePageHoweverLongANameIs() throws IOException {
        String name = "N".repeat(10_000);
        try (PDDocument pdf = read(document(
                name,
                Document.Form.PORTRAIT,
                new Section(
                        name,
                        List.of(
                                table(6, name),
                                new Paragraph(name),
                                new Caution(List.of(name)),
                                new KeyValues(List.of(new KeyValues.Pair(name, name)))))))) {
            List<String> outside = new ArrayList<>();
            int[] letters = {0};
            PDFTextStripper eye = new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    PDRectangle box = getCurrentPage().getMediaBox();
                    letters[0] += text.getUnicode().equals("N") ? 1 : 0;
                    boolean inside = text.getXDirAdj() >= 28
                            && text.getXDirAdj() + text.getWidthDirAdj() <= box.getWidth() - 28
                            && text.getYDirAdj() - text.getHeightDir() >= 10
                            && text.getYDirAdj() <= box.getHeight() - 10;
                    if (!inside) {
                        outside.add(text.getUnicode() + " at " + text.getXDirAdj() + " " + text.getYDirAdj());
                    }
                }
            };
            eye.getText(pdf);
            assertEquals(List.of(), outside);
            assertTrue(letters[0] >= 6 * 10_000, "every letter is there: " + letters[0]);
        }
    }

    @Test
    void marksThatTurnTheDirectionOfTextAreShownAsUnprintable() throws IOException {
        try (PDDocument pdf = read(document(
                "T", Document.Form.PORTRAIT, new Section("", List.of(new Paragraph("<b>a</b> \u202Eevil &amp;")))))) {
            String seen = new PDFTextStripper().getText(pdf);
            assertTrue(seen.contains("<b>a</b> \uFFFDevil &amp;"), seen);
        }
    }

    @Test
    void noLineForASignatureWhereSomethingGraveIsOpen() throws IOException {
        try (PDDocument pdf = read(document(
                "T",
                Document.Form.PORTRAIT,
                new Section("", List.of(new SignOff(List.of("released"), List.of("S1 P06 two supplies joined"))))))) {
            String seen = new PDFTextStripper().getText(pdf);
            assertTrue(seen.contains("Not to be signed") && seen.contains("P06"), seen);
            assertFalse(seen.contains("signature"), seen);
        }
    }

    @Test
    void equalDocumentsGiveEqualBytes() throws InterruptedException {
        Document document = document("T", Document.Form.PORTRAIT, new Section("", List.of(table(30, "x"))));
        byte[] first = PdfDocuments.of(INFO, List.of(document), Paper.A4).bytes();
        // Dates in a PDF are counted in seconds.
        Thread.sleep(1100);
        byte[] again = PdfDocuments.of(INFO, List.of(document), Paper.A4).bytes();
        assertArrayEquals(first, again);
    }
}
