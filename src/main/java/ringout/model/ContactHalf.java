package ringout.model;

import java.util.List;

/** Contacts a plug half carries: named by the contact, not by the shell. */
public enum ContactHalf implements Word {
    /** pins. */
    PINS("pins", "pin", "male"),
    /** sockets. */
    SOCKETS("sockets", "socket", "female"),
    /** neutral. */
    NEUTRAL("neutral", "hermaphrodite");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    ContactHalf(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
