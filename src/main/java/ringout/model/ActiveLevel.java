package ringout.model;

import java.util.List;

/** Level of a trigger or feedback contact that means "now". */
public enum ActiveLevel implements Word {
    /** high. */
    HIGH("high", "rising", "active high"),
    /** low. */
    LOW("low", "falling", "active low", "closure");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    ActiveLevel(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
