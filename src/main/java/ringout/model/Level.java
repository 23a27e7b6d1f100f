package ringout.model;

import java.util.List;

/** Place of a rotor on its arm. */
public enum Level implements Word {
    /** single. */
    SINGLE("single"),
    /** upper. */
    UPPER("upper"),
    /** lower. */
    LOWER("lower");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    Level(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
