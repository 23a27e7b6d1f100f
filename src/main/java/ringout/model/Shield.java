package ringout.model;

import java.util.List;

/** Shield of a lead and which end is grounded. */
public enum Shield implements Word {
    /** none. */
    NONE("none"),
    /** floating. */
    FLOATING("floating"),
    /** from end. */
    FROM("from end", "from"),
    /** to end. */
    TO("to end", "to"),
    /** both ends. */
    BOTH("both ends", "both");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    Shield(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
