package ringout.check.form;

/**
 * A check that makes a change on a copy of the list and has the other checks look at the copy: what would happen if. It runs after
 * all others and says nothing before.
 */
public interface Trying extends Check {
    @Override
    default void look(Situation at, Outcomes out) {
        // everything it says comes of trying
    }

    /**
     * Tries changes.
     *
     * @param at the list as it is, in the first state that is flown
     * @param trials tries a change
     */
    void tryOut(Situation at, Trials trials, Outcomes out);
}
