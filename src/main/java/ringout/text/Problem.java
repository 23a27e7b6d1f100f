package ringout.text;

/**
 * Something in the user's files that cannot be read as meant. All problems of a run are told at once.
 *
 * @param at where
 * @param message what is wrong, with the offending value
 * @param hint how to mend it, or the nearest match; may be empty
 */
public record Problem(Span at, String message, String hint) {
    private static final int LONGEST = 600;

    /** A problem; message and hint are made fit for one line, whatever the file held. */
    public Problem {
        message = Characters.shown(message, LONGEST);
        hint = Characters.shown(hint, LONGEST);
    }

    /** A problem without a hint. */
    public static Problem of(Span at, String message) {
        return new Problem(at, message, "");
    }

    /** One line: place, message, hint. */
    public String words() {
        return at.words() + ": " + message + (hint.isEmpty() ? "" : " (" + hint + ")");
    }
}
