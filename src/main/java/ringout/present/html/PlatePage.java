package ringout.present.html;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringout.sheet.document.Document;
import ringout.sheet.document.Figure;

/** Lets a drawing with a frame be printed on a page of its own size: scaled down its lettering could not be read. */
final class PlatePage {
    private static final Pattern SIZE =
            Pattern.compile("<svg[^>]* width=\"([0-9]+)(?:\\.[0-9]+)?mm\" height=\"([0-9]+)(?:\\.[0-9]+)?mm\"");

    private PlatePage() {}

    /** The attribute that sends a figure to a page of its size; nothing for one that has none. */
    static String attribute(String svg) {
        Matcher size = SIZE.matcher(svg);
        return size.find() ? " class=\"plate\" style=\"page: " + name(size) + "\"" : "";
    }

    private static String name(Matcher size) {
        return "plate-" + size.group(1) + "-" + size.group(2);
    }

    /** The rules for all sizes there are. */
    static String rules(List<Document> documents) {
        Map<String, String> rules = new TreeMap<>();
        for (Document document : documents) {
            for (Figure figure : document.figures()) {
                Matcher size = SIZE.matcher(figure.svg().get());
                if (size.find()) {
                    rules.put(name(size), "{ size: " + size.group(1) + "mm " + size.group(2) + "mm; margin: 0; }");
                }
            }
        }
        StringBuilder out = new StringBuilder();
        rules.forEach((name, rule) ->
                out.append("@page ").append(name).append(' ').append(rule).append('\n'));
        return out.toString();
    }
}
