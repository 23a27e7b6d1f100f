package ringout.present.html;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringout.draw.letter.Lettering;
import ringout.sheet.document.Document;
import ringout.sheet.document.Section;

/**
 * Writes documents into one page that needs nothing else: no script, one style sheet, readable on a telephone and good on
 * paper, every document on a sheet of its own with the revision mark on each printed page.
 */
public final class DocumentPage {
    private static final Pattern PART = Pattern.compile("@([A-Z]+)@");

    private static final int LONG_WORD = 40;
    private static final int PIECE = 20;

    private DocumentPage() {}

    /**
     * {@return the page, ending in \n}
     *
     * @param title of the page
     * @param creator the program and its version
     * @param paper name of the paper size it is printed on: A4, A3
     * @param documents at least one
     */
    public static String of(String title, String creator, String paper, List<Document> documents) {
        StringBuilder index = new StringBuilder();
        StringBuilder texts = new StringBuilder();
        for (Document document : documents) {
            String id = "sheet-" + document.sheet();
            index.append("<li><a href=\"#").append(id).append("\">");
            index.append(clean(document.title())).append("</a></li>\n");
            write(texts, id, document);
        }
        String mark = documents.get(0).mark().words();
        String style = filled(
                HtmlPage.resource("document.css"),
                Map.of("PAPER", paper, "MARK", css(mark), "FOOT", css("propellers off before any pack is plugged")));
        return filled(
                HtmlPage.resource("document.html"),
                Map.of(
                        "TITLE", clean(title),
                        "CREATOR", clean(creator),
                        "MARK", clean(mark),
                        "STYLE", style + PlatePage.rules(documents),
                        "INDEX", index.toString(),
                        "DOCUMENTS", texts.toString()));
    }

    /** In one pass: what is put in is never looked at again, whatever it holds. */
    private static String filled(String form, Map<String, String> parts) {
        return PART.matcher(form)
                .replaceAll(part -> Matcher.quoteReplacement(parts.getOrDefault(part.group(1), part.group())));
    }

    /** A text that may stand anywhere: nothing in it is markup, and a word too long for a line may be broken. */
    static String clean(String text) {
        StringBuilder out = new StringBuilder();
        for (String word : Lettering.printable(text).split("(?<= )", -1)) {
            int[] letters = word.codePoints().toArray();
            for (int i = 0; i < letters.length; i++) {
                boolean may = letters.length > LONG_WORD && i > 0 && i % PIECE == 0;
                out.append(may ? "<wbr>" : "").append(Escape.html(Character.toString(letters[i])));
            }
        }
        return out.toString();
    }

    /** Text inside a quoted string of the style sheet, which itself stands inside an element. */
    private static String css(String text) {
        StringBuilder out = new StringBuilder();
        for (int c : Lettering.printable(text).codePoints().toArray()) {
            boolean plain = Character.isLetterOrDigit(c) || c == ' ' || c == ',' || c == '.' || c == '-';
            out.append(plain ? Character.toString(c) : String.format(Locale.ROOT, "\\%06x", c));
        }
        return out.toString();
    }

    private static void write(StringBuilder out, String id, Document document) {
        String form =
                switch (document.form()) {
                    case PORTRAIT -> "";
                    case LANDSCAPE -> " class=\"flat\"";
                    case DRAWINGS -> " class=\"plates\"";
                };
        out.append("<article id=\"").append(id).append('"').append(form);
        out.append(" aria-labelledby=\"")
                .append(id)
                .append("-title\">\n<h2 id=\"")
                .append(id)
                .append("-title\">");
        out.append(clean(document.title()))
                .append("</h2>\n<p class=\"mark\">sheet ")
                .append(document.sheet());
        out.append(" of ")
                .append(document.of())
                .append(", ")
                .append(clean(document.mark().words()));
        out.append("</p>\n");
        if (!document.foot().isEmpty()) {
            out.append("<p class=\"foot\">").append(clean(document.foot())).append("</p>\n");
        }
        BlockHtml blocks = new BlockHtml(out);
        for (Section section : document.sections()) {
            if (!section.title().isEmpty()) {
                out.append("<h3>").append(clean(section.title())).append("</h3>\n");
            }
            section.blocks().forEach(blocks::write);
        }
        out.append("</article>\n");
    }
}
