package ringout.model;

import java.util.List;

/** What joins two bus sockets of one unit. */
public enum PassThrough implements Word {
    /** passive. */
    PASSIVE("passive", "copper"),
    /** active. */
    ACTIVE("active"),
    /** none. */
    NONE("none");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    PassThrough(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
