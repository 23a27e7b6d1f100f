package ringout.check.form;

import java.util.List;
import ringout.finding.CannotTell;

/** A check that looks at what other checks could not decide. It runs after all others and says nothing before. */
public interface Gathering extends Check {
    @Override
    default void look(Situation at, Outcomes out) {
        // nothing to see in one aircraft alone
    }

    /**
     * Looks at what the other checks could not decide.
     *
     * @param open what could not be decided by checks whose findings would be S1 or S2
     */
    void gather(List<CannotTell> open, Outcomes out);
}
