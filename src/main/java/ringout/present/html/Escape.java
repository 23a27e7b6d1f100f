package ringout.present.html;

/** Text as it may stand in an element or a quoted attribute. */
final class Escape {
    private Escape() {}

    static String html(String text) {
        return text.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }
}
