package ringout.present.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringout.finding.Report;
import ringout.sheet.page.PageBook;

/**
 * Writes the page: one file with its style, its script, all drawings and all that can be looked up. Nothing is loaded from
 * elsewhere, and a policy in the file forbids it.
 */
public final class HtmlPage {
    private static final Pattern PART = Pattern.compile("@([A-Z]+)@");
    private static final List<String> SCRIPTS =
            List.of("data", "stage", "record", "detail", "dialogue", "fault", "lists", "page");

    private HtmlPage() {}

    /** {@return the page, ending in \n} */
    public static String of(PageHead head, Report report, PageBook book, List<PageSheet> sheets) {
        StringBuilder templates = new StringBuilder();
        for (PageSheet sheet : sheets) {
            templates
                    .append("<template class=\"sheet\" data-sheet=\"")
                    .append(Escape.html(sheet.name()))
                    .append("\">")
                    .append(sheet.inline())
                    .append("</template>\n");
        }
        StringBuilder scripts = new StringBuilder();
        SCRIPTS.forEach(name -> scripts.append(resource(name + ".js")));
        Map<String, String> parts = Map.of(
                "TITLE", Escape.html(head.title()),
                "MARK", Escape.html(head.mark()),
                "VERSION", Escape.html(head.version()),
                "STYLE", resource("page.css"),
                "SHEETS", templates.toString(),
                "DATA", PageJson.of(head, report, book),
                "SCRIPT", scripts.toString());
        // In one pass: what is put in is never looked at again, whatever names it holds.
        return PART.matcher(resource("page.html"))
                .replaceAll(part -> Matcher.quoteReplacement(parts.getOrDefault(part.group(1), "")));
    }

    /** {@return a text that comes with the program} */
    static String resource(String name) {
        try (InputStream in = HtmlPage.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("the page lacks its part " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
