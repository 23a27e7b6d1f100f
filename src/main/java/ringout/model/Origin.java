package ringout.model;

import java.util.List;

/** Where a number comes from, best first. */
public enum Origin implements Word {
    /** measured. */
    MEASURED("measured"),
    /** label. */
    LABEL("label"),
    /** maker. */
    MAKER("maker"),
    /** list. */
    LIST("list"),
    /** calculated. */
    CALCULATED("calculated"),
    /** assumed. */
    ASSUMED("assumed");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    Origin(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
