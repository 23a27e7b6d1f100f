package ringout.present.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.draw.harness.SheetSet;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.present.png.PngWriter;
import ringout.present.svg.SvgOutcome;
import ringout.read.AircraftReader;

/** The whole set as PDF, read back and rendered with a library that had no part in writing it. */
class PdfSheetsTest {
    private static final PdfInfo INFO = new PdfInfo("Set of Ex-1", "data 1a2b3c4d", "ringout test");
    private static final Pattern TEXT = Pattern.compile("<text [^>]*>([^<]*)</text>");
    private static final double POINTS_PER_MM = 72 / 25.4;

    private static List<PdfSheets.Page> pages = List.of();
    private static byte[] bytes = {};
    private static PDDocument pdf = new PDDocument();

    @BeforeAll
    static void write() throws IOException {
        List<Circuit> circuits = Circuit.all(
                Wiring.of(AircraftReader.read(Path.of("samples/starter")).aircraft()));
        List<PdfSheets.Page> drawn = new ArrayList<>();
        var report = Review.of(circuits, Catalogue.all(), Review.NO_DAY);
        for (SheetSet.Numbered sheet : SheetSet.of(circuits.get(0), report, "0badcafe")) {
            SvgOutcome outcome = SvgOutcome.of(sheet.sheet());
            assertTrue(outcome instanceof SvgOutcome.Verified, outcome::toString);
            drawn.add(new PdfSheets.Page(sheet.sheet().title(), sheet.sheet().size(), (SvgOutcome.Verified) outcome));
        }
        pages = drawn;
        PdfFile file = PdfSheets.of(INFO, pages);
        assertEquals(List.of(), file.flaws());
        bytes = file.bytes();
        pdf.close();
        pdf = Loader.loadPDF(bytes);
    }

    @AfterAll
    static void close() throws IOException {
        pdf.close();
    }

    @Test
    void everySheetIsOnePageOfItsSize() {
        assertEquals(pages.size(), pdf.getNumberOfPages());
        for (int i = 0; i < pages.size(); i++) {
            PDPage page = pdf.getPage(i);
            assertEquals(
                    pages.get(i).size().width() * POINTS_PER_MM,
                    page.getMediaBox().getWidth(),
                    0.1);
            assertEquals(
                    pages.get(i).size().height() * POINTS_PER_MM,
                    page.getMediaBox().getHeight(),
                    0.1);
        }
    }

    private static String bare(String text) {
        return text.replaceAll("\\s+", "")
                .replace("&amp;", "&")
                .replace("&lt;", "<")
                .replace("&gt;", ">")
                .replace("&quot;", "\"");
    }

    private static List<String> textsOf(String svg) {
        List<String> texts = new ArrayList<>();
        Matcher matcher = TEXT.matcher(svg);
        while (matcher.find()) {
            texts.add(bare(matcher.group(1)));
        }
        return texts;
    }

    /** Letters in the order they were written, each run of them searchable as one. */
    @Test
    void everyTextOfTheDrawingIsTextOfThePage() throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        for (int i = 0; i < pages.size(); i++) {
            stripper.setStartPage(i + 1);
            stripper.setEndPage(i + 1);
            String seen = bare(stripper.getText(pdf));
            List<String> texts = textsOf(pages.get(i).svg().text());
            assertFalse(texts.isEmpty(), pages.get(i).title());
            for (String text : texts) {
                assertTrue(seen.contains(text), pages.get(i).title() + " lacks " + text);
            }
            assertTrue(seen.contains((i + 1) + "of" + pages.size()), "the sheet number is the page number");
        }
    }

    @Test
    void noLetterLiesOutsideItsPage() throws IOException {
        int[] count = {0};
        PDFTextStripper stripper = new PDFTextStripper() {
            @Override
            protected void processTextPosition(TextPosition at) {
                PDPage page = getCurrentPage();
                assertTrue(
                        at.getX() >= 0
                                && at.getX() + at.getWidth()
                                        <= page.getMediaBox().getWidth(),
                        at::toString);
                assertTrue(at.getY() >= 0 && at.getY() <= page.getMediaBox().getHeight(), at::toString);
                count[0]++;
            }
        };
        stripper.getText(pdf);
        assertTrue(count[0] > 3_000, "only " + count[0] + " letters");
    }

    @Test
    void onlyEmbeddedFontsAreUsed() throws IOException {
        for (PDPage page : pdf.getPages()) {
            int fonts = 0;
            for (COSName name : page.getResources().getFontNames()) {
                assertTrue(page.getResources().getFont(name).isEmbedded(), name.getName());
                assertTrue(page.getResources().getFont(name).getName().contains("DejaVuSansCondensed"), name.getName());
                fonts++;
            }
            assertTrue(fonts > 0, "a page without text");
        }
    }

    @Test
    void everySheetHasItsBookmark() throws IOException {
        List<String> titles = new ArrayList<>();
        List<Integer> targets = new ArrayList<>();
        for (PDOutlineItem item : pdf.getDocumentCatalog().getDocumentOutline().children()) {
            titles.add(item.getTitle());
            targets.add(pdf.getPages().indexOf(item.findDestinationPage(pdf)));
        }
        assertEquals(pages.stream().map(PdfSheets.Page::title).toList(), titles);
        for (int i = 0; i < targets.size(); i++) {
            assertEquals(i, targets.get(i));
        }
        assertEquals("Set of Ex-1", pdf.getDocumentInformation().getTitle());
        assertEquals("data 1a2b3c4d", pdf.getDocumentInformation().getSubject());
    }

    @Test
    void theSameSheetsGiveTheSameBytes() {
        byte[] again = PdfSheets.of(INFO, pages).bytes();
        assertArrayEquals(bytes, again);
        // Both may have been written within one second.
        Matcher dates = Pattern.compile("Date>(\\d{4})").matcher(new String(again, StandardCharsets.ISO_8859_1));
        while (dates.find()) {
            assertEquals("2000", dates.group(1));
        }
    }

    /**
     * Where the one is dark the other is: hatchings, dashes, rings and arrows are in the file. Fields of 5 mm are compared by
     * the share of their dark, so that the two ways of smoothing edges do not count.
     */
    @Test
    void pagesLookLikeTheirPictures() throws IOException {
        PDFRenderer renderer = new PDFRenderer(pdf);
        for (int i : List.of(1, 5, pages.size() - 1)) {
            BufferedImage page = renderer.renderImageWithDPI(i, 72, ImageType.RGB);
            BufferedImage picture = ImageIO.read(
                    new ByteArrayInputStream(PngWriter.write(pages.get(i).svg(), 72)));
            double worst = 0;
            double dark = 0;
            for (int x = 0; x + 14 < Math.min(page.getWidth(), picture.getWidth()); x += 14) {
                for (int y = 0; y + 14 < Math.min(page.getHeight(), picture.getHeight()); y += 14) {
                    worst = Math.max(worst, Math.abs(darkness(page, x, y) - darkness(picture, x, y)));
                    dark += darkness(page, x, y);
                }
            }
            assertTrue(worst < 0.2, pages.get(i).title() + " differs by " + worst);
            assertTrue(dark > 50, pages.get(i).title() + " is empty");
        }
    }

    /** The share of dark in a field of 14 by 14 dots. */
    private static double darkness(BufferedImage image, int left, int top) {
        double sum = 0;
        for (int x = left; x < left + 14; x++) {
            for (int y = top; y < top + 14; y++) {
                int rgb = image.getRGB(x, y);
                sum += 1 - ((rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255)) / 765.0;
            }
        }
        return sum / 196;
    }
}
