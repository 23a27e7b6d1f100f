package ringout.sheet.document;

/**
 * A paragraph of running text.
 *
 * @param text in whole sentences
 */
public record Paragraph(String text) implements Block {}
