package ringout.model;

import java.util.List;

/** Whose transmit a serial pin name means. */
public enum NamedFrom implements Word {
    /** self. */
    SELF("self"),
    /** peer. */
    PEER("peer");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    NamedFrom(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
