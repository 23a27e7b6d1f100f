package ringout.model;

import java.util.List;

/** What a safety input does when it is left open. */
public enum SafeDefault implements Word {
    /** safe. */
    SAFE("safe"),
    /** unsafe. */
    UNSAFE("unsafe");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    SafeDefault(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
