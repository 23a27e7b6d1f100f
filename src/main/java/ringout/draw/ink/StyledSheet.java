package ringout.draw.ink;

import java.util.List;
import ringout.draw.paper.SheetSize;

/**
 * A sheet ready to be written.
 *
 * @param size paper
 * @param title what the sheet is, in words
 * @param description more words
 * @param hatches the hatchings it uses
 * @param ink from the lowest to the uppermost
 * @param promised the wires that must be found on it, each once
 * @param things the things that must be found on it, each once, and no others; nothing is asked when there are none
 */
public record StyledSheet(
        SheetSize size,
        String title,
        String description,
        List<HatchTile> hatches,
        List<Ink> ink,
        List<Promise> promised,
        List<String> things) {
    /**
     * A wire that must be on the sheet.
     *
     * @param wire its identifier
     * @param from identifier of the row, splice or reference it starts at
     * @param to the same of its end
     */
    public record Promise(String wire, String from, String to) {}

    /** Keeps unmodifiable copies. */
    public StyledSheet {
        hatches = List.copyOf(hatches);
        ink = List.copyOf(ink);
        promised = List.copyOf(promised);
        things = List.copyOf(things);
    }

    /** A sheet of which only the wires are promised. */
    public StyledSheet(
            SheetSize size,
            String title,
            String description,
            List<HatchTile> hatches,
            List<Ink> ink,
            List<Promise> promised) {
        this(size, title, description, hatches, ink, promised, List.of());
    }
}
