package ringout.present.svg;

import java.util.List;
import ringout.draw.ink.StyledSheet.Promise;

/**
 * A sheet as SVG text, not yet verified.
 *
 * @param text the whole document, lines ending in a line feed
 * @param promised the wires that must be found in it
 */
public record SvgText(String text, List<Promise> promised) {
    /** Keeps an unmodifiable copy of the promises. */
    public SvgText {
        promised = List.copyOf(promised);
    }
}
