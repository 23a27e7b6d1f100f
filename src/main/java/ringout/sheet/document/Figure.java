package ringout.sheet.document;

import java.util.function.Supplier;

/**
 * A drawing among the text. What draws it is given by the caller, so that a drawing nobody looks at is not drawn.
 *
 * @param title what it shows
 * @param svg gives the drawing as SVG, its size in mm in the root element
 */
public record Figure(String title, Supplier<String> svg) implements Block {}
