package ringout.present.svg;

/** Elements and attributes as text, with everything escaped that XML 1.0 asks for. */
final class Markup {
    private final StringBuilder out = new StringBuilder();
    private int depth;

    void declare() {
        out.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    }

    /** Starts a start tag; attributes follow. */
    Markup open(String name) {
        out.append("  ".repeat(depth)).append('<').append(name);
        return this;
    }

    Markup attribute(String name, String value) {
        out.append(' ').append(name).append("=\"");
        escape(value);
        out.append('"');
        return this;
    }

    Markup attribute(String name, double value) {
        return attribute(name, Numbers.of(value));
    }

    /** Ends an element without content. */
    void empty() {
        out.append("/>\n");
    }

    /** Ends the start tag of an element with elements in it. */
    void nest() {
        out.append(">\n");
        depth++;
    }

    /** Ends an element with elements in it. */
    void close(String name) {
        depth--;
        out.append("  ".repeat(depth)).append("</").append(name).append(">\n");
    }

    /** Ends an element with text in it. */
    void text(String text, String name) {
        out.append('>');
        escape(text);
        out.append("</").append(name).append(">\n");
    }

    private void escape(String text) {
        for (int c : text.codePoints().toArray()) {
            switch (c) {
                case '&' -> out.append("&amp;");
                case '<' -> out.append("&lt;");
                case '>' -> out.append("&gt;");
                case '"' -> out.append("&quot;");
                default -> out.appendCodePoint(isCharacter(c) ? c : 0xFFFD);
            }
        }
    }

    /** The characters XML 1.0 allows, without those that would be changed on reading. */
    private static boolean isCharacter(int c) {
        return (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD) || c >= 0x10000;
    }

    @Override
    public String toString() {
        return out.toString();
    }
}
