package ringout.model;

import java.util.List;

/** Kind of a joint. */
public enum JointKind implements Word {
    /** splice. */
    SPLICE("splice"),
    /** clamp. */
    CLAMP("clamp"),
    /** stud. */
    STUD("stud");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    JointKind(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
