package ringout.model;

import java.util.List;

/** Where a pin-out comes from. */
public enum PinoutSource implements Word {
    /** maker. */
    MAKER("maker"),
    /** ring-out. */
    RING_OUT("ring-out", "ringout"),
    /** forum. */
    FORUM("forum"),
    /** memory. */
    MEMORY("memory");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    PinoutSource(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
