package ringout.present.pdf;

/**
 * What a PDF file says of itself.
 *
 * @param title of the file
 * @param subject what ties it to an aircraft and its data
 * @param creator the program and its version
 */
public record PdfInfo(String title, String subject, String creator) {}
