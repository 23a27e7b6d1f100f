package ringout.present.html;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import ringout.sheet.document.Block;
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

/** Documents as a page. */
class DocumentPageTest {
    private static final String HOSTILE = "<script>alert('1')</script> \"@TITLE@\" \u202E & }</style>";

    private static String page(String text) {
        RevisionMark mark = new RevisionMark(text, text, "C", "5", "as flown", "1a2b3c4d");
        List<Block> blocks = List.of(
                new Paragraph(text),
                new Caution(List.of(text)),
                new KeyValues(List.of(new KeyValues.Pair(text, text))),
                Table.named("t", Column.text(text), Column.tick("seen"))
                        .titled(text)
                        .by("plug")
                        .group(text)
                        .row(text, "")
                        .table(),
                new Figure(text, () -> "<?xml version=\"1.0\"?><svg xmlns=\"http://www.w3.org/2000/svg\"/>"),
                new SignOff(List.of(text), List.of()),
                new SignOff(List.of(), List.of(text)));
        Document document =
                new Document("k", text, mark, 1, 1, Document.Form.LANDSCAPE, text, List.of(new Section(text, blocks)));
        return DocumentPage.of(text, text, "A4", List.of(document));
    }

    @Test
    void nothingInTheDataIsMarkup() {
        String page = page(HOSTILE);
        assertFalse(page.contains("<script"), page);
        assertFalse(page.contains("\u202E"));
        assertEquals(1, count(page, "</style>"));
        assertTrue(page.contains("&lt;script&gt;alert(&#39;1&#39;)&lt;/script&gt;"), page);
        assertTrue(page.contains("@TITLE@"), "what looks like a place to fill in the data stays as it is");
    }

    @Test
    void nothingIsLoadedFromElsewhere() {
        String page = page("plain");
        assertFalse(
                Pattern.compile("(src|href)=\"(?!#)|url\\(|@import")
                        .matcher(page)
                        .find(),
                page);
        assertTrue(page.contains("default-src 'none'"));
    }

    @Test
    void aLongWordMayBeBroken() {
        String page = page("N".repeat(10_000));
        assertTrue(page.contains("N".repeat(20) + "<wbr>" + "N".repeat(20)));
        assertFalse(Pattern.compile("<(td|p|dd|dt|li|h2|h3|th)[^<]*N{41}")
                .matcher(page)
                .find());
    }

    @Test
    void boxesToTickAndTheMarkAreThere() {
        String page = page("plain");
        assertTrue(page.contains("<td class=\"tick\">\u2610</td>"), page);
        assertTrue(page.contains("sheet 1 of 1, plain, rev C, tail plain, as-built 5, as flown, data 1a2b3c4d"), page);
        assertTrue(page.contains("page: flat"));
    }

    private static int count(String text, String part) {
        return text.split(Pattern.quote(part), -1).length - 1;
    }
}
