package ringout.sheet.document;

import java.util.List;

/**
 * Cautions that stand before what they are about, set apart from everything else.
 *
 * @param lines one hazard a line, with what to do about it
 */
public record Caution(List<String> lines) implements Block {
    /** Keeps its own copy. */
    public Caution {
        lines = List.copyOf(lines);
    }
}
