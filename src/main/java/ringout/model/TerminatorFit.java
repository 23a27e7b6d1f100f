package ringout.model;

import java.util.List;

/** How a terminator is fitted in a unit type. */
public enum TerminatorFit implements Word {
    /** none. */
    NONE("none"),
    /** fixed. */
    FIXED("fixed", "built in"),
    /** switch. */
    SWITCH("switch"),
    /** auto. */
    AUTO("auto"),
    /** plug. */
    PLUG("plug");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    TerminatorFit(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
