package ringout.draw.scene;

/**
 * A paragraph below a drawing.
 *
 * @param head one word in bold before it, such as {@code path}
 * @param text the paragraph, wrapped to the width of the sheet
 */
public record Remark(String head, String text) {}
