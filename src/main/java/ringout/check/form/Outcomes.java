package ringout.check.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.finding.CannotTell;
import ringout.finding.Draft;
import ringout.finding.Finding;
import ringout.finding.Trial;
import ringout.finding.Trial.Told;

/** What one check says in one state. A check that says nothing at all had nothing to look at. */
public final class Outcomes {
    private final Class<?> check;
    private final String state;
    private final List<Finding> findings = new ArrayList<>();
    private final List<CannotTell> cannotTell = new ArrayList<>();
    private final List<Trial> trials = new ArrayList<>();
    private boolean looked;

    /** Outcomes of a check in a state. */
    public Outcomes(Class<?> check, String state) {
        this.check = check;
        this.state = state;
    }

    /** There was something to look at, and the datum for it. */
    public void looked() {
        looked = true;
    }

    /** Something is wrong. */
    public void finding(Draft draft) {
        looked = true;
        CheckInfo info = check.getAnnotation(CheckInfo.class);
        findings.add(draft.sign(info.code(), info.name(), state));
    }

    /**
     * A datum is missing.
     *
     * @param missing the datum in trade words
     * @param how the cheapest way to get it
     * @param minutes how long that takes
     * @param objects what cannot be decided about
     */
    public void cannotTell(String missing, String how, int minutes, String... objects) {
        CheckInfo info = check.getAnnotation(CheckInfo.class);
        cannotTell.add(
                new CannotTell(info.code(), info.name(), List.of(objects), missing, how, minutes, List.of(state)));
    }

    /**
     * A wrong way to plug, for the table of all of them.
     *
     * @param plugs kind of plug
     * @param sockets where the plug belongs, and where it went
     * @param words what is done
     * @param worst the worst finding it leads to
     */
    public void trial(String plugs, List<String> sockets, String words, Told told, Optional<Finding> worst) {
        trials.add(new Trial(check.getAnnotation(CheckInfo.class).code(), plugs, sockets, words, told, worst));
    }

    /** The wrong ways to plug so far. */
    public List<Trial> trials() {
        return trials;
    }

    /** The findings so far. */
    public List<Finding> findings() {
        return findings;
    }

    /** What could not be decided so far. */
    public List<CannotTell> cannotTell() {
        return cannotTell;
    }

    /** Whether there was something to look at. */
    public boolean hasLooked() {
        return looked;
    }
}
