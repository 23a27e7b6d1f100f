package ringout.sheet.document;

import java.util.List;

/**
 * A few facts, each with its name.
 *
 * @param pairs in the order they are read
 */
public record KeyValues(List<Pair> pairs) implements Block {
    /** Keeps its own copy. */
    public KeyValues {
        pairs = List.copyOf(pairs);
    }

    /**
     * One fact.
     *
     * @param key its name
     * @param value the fact, with its unit
     */
    public record Pair(String key, String value) {}
}
