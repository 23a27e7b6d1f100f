package ringout.draw.style;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.StyledSheet;
import ringout.draw.ink.StyledSheet.Promise;

/**
 * A drawing with its margins, not yet numbered.
 *
 * @param margins frame, title block, legend, finding list
 * @param description what is on it, in words
 * @param drawing the ink within the margins
 * @param promised the lines that must be found on it, each once
 * @param things the things that must be found on it, each once
 */
public record Drawn(
        Margins margins, String description, List<Ink> drawing, List<Promise> promised, List<String> things) {
    /** Keeps unmodifiable copies. */
    public Drawn {
        drawing = List.copyOf(drawing);
        promised = List.copyOf(promised);
        things = List.copyOf(things);
    }

    /** {@return the sheet as number n of a set of m sheets, ready to be written} */
    public StyledSheet numbered(int sheet, int sheets) {
        Margins titled = margins.titled(margins.info().numbered(sheet, sheets));
        List<Ink> ink = new ArrayList<>(titled.draw(drawing));
        ink.addAll(drawing);
        return new StyledSheet(
                titled.size(), titled.info().documentType(), description, Hatchings.all(), ink, promised, things);
    }
}
