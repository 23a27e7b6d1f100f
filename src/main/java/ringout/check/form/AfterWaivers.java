package ringout.check.form;

import java.util.List;
import ringout.finding.Headline;
import ringout.finding.LapsedWaiver;
import ringout.model.Waiver;

/** A check that looks at which waivers hold. It runs after they were applied and says nothing before. */
public interface AfterWaivers extends Check {
    @Override
    default void look(Situation at, Outcomes out) {
        // nothing to see before the waivers are applied
    }

    /**
     * Looks at the waivers of an aircraft. A finding has the identity of the waived finding as its first object and is
     * folded under it.
     *
     * @param waivers all waivers
     * @param lapsed those that do not hold, and why
     * @param open headlines that no waiver covers
     */
    void waived(List<Waiver> waivers, List<LapsedWaiver> lapsed, List<Headline> open, Outcomes out);
}
