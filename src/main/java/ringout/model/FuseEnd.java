package ringout.model;

import java.util.List;

/** Which end of a lead its fuse sits at. */
public enum FuseEnd implements Word {
    /** from. */
    FROM("from"),
    /** to. */
    TO("to");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    FuseEnd(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
