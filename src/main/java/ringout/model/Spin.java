package ringout.model;

import java.util.List;

/** Turning direction seen from above. */
public enum Spin implements Word {
    /** CW. */
    CW("CW", "clockwise"),
    /** CCW. */
    CCW("CCW", "counter-clockwise", "anticlockwise");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    Spin(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
