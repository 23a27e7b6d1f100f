package ringout.model;

import java.util.List;

/** Terminator of a unit as it is set. */
public enum TerminatorState implements Word {
    /** none. */
    NONE("none"),
    /** fixed. */
    FIXED("fixed", "built in"),
    /** on. */
    ON("on", "yes"),
    /** off. */
    OFF("off", "no"),
    /** plug. */
    PLUG("plug"),
    /** auto. */
    AUTO("auto");

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    TerminatorState(String... words) {
        this.words = List.of(words);
    }

    @Override
    public List<String> words() {
        return words;
    }
}
