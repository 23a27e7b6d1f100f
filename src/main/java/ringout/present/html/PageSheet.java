package ringout.present.html;

/**
 * A drawing on the page.
 *
 * @param name its file name without ending
 * @param svg the verified document
 */
public record PageSheet(String name, String svg) {
    /** The document without its XML declaration, to stand inside another. */
    String inline() {
        int start = svg.indexOf("<svg");
        return start < 0 ? "" : svg.substring(start);
    }
}
