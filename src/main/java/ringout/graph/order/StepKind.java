package ringout.graph.order;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.model.Datum;

/** What is done in a step of the procedure. */
public enum StepKind {
    /** A unit, or a propeller on it, is fitted. */
    FIT("fit", "mount"),
    /** A lead or a plug is made. */
    MAKE("make", "connect", "plug"),
    /** A setting is made. */
    SET("set"),
    /** Something is looked at or measured. */
    CHECK("check", "test", "measure"),
    /** A photo is taken. */
    PHOTO("photo"),
    /** A cover is closed. */
    CLOSE("close", "cover"),
    /** A cover is opened again. */
    OPEN("open", "uncover"),
    /** A lead or a plug is broken. */
    BREAK("break", "unplug", "disconnect"),
    /** Power comes on. */
    ENERGISE("energise", "energize", "power"),
    /** A hold point is signed. */
    SIGN("sign", "hold"),
    /** Anything else. */
    OTHER();

    @SuppressWarnings("ImmutableEnumChecker") // List.of is immutable
    private final List<String> words;

    StepKind(String... words) {
        this.words = List.of(words);
    }

    /** The word it is told by. */
    public String word() {
        return words.isEmpty() ? "other" : words.get(0);
    }

    /** The kind of an action; empty when nobody said what is done. */
    public static Optional<StepKind> of(Datum<String> action) {
        if (action.isMissing()) {
            return Optional.empty();
        }
        String word = action.or("").strip().toLowerCase(Locale.ROOT);
        for (StepKind kind : values()) {
            if (kind.words.contains(word)) {
                return Optional.of(kind);
            }
        }
        return Optional.of(OTHER);
    }
}
