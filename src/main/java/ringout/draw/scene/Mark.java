package ringout.draw.scene;

import java.util.List;

/**
 * A finding shown on the sheet: a badge with a number on each thing it names, and a casing around it if it is severe.
 *
 * @param number the line of the finding list
 * @param kind the shape
 * @param waived accepted by a waiver: hatched, with the letter W, without casing
 * @param targets identifiers of boxes, plugs, rows, splices or wires
 */
public record Mark(int number, BadgeKind kind, boolean waived, List<String> targets) {
    /** Keeps an unmodifiable copy of the targets. */
    public Mark {
        targets = List.copyOf(targets);
    }

    /** {@return what the badge says: the number, after a W when waived, after a question mark when undecided} */
    public String text() {
        String letter = waived ? "W" : kind == BadgeKind.CANNOT_TELL ? "?" : "";
        return letter + number;
    }
}
