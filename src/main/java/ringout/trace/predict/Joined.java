package ringout.trace.predict;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.solve.meter.Change;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Defect;

/** Two faults at once, as one candidate with the edits of both. */
public final class Joined {
    /** Nothing wrong, as a candidate that changes nothing: what every test shows on the sound aircraft. */
    public static final Candidate SOUND = Healthy.CIRCUIT;

    private Joined() {}

    /** Whether both together are one edit of the graph: at most one of them lies in what is no edit. */
    public static boolean isOneEdit(Candidate one, Candidate other) {
        return !isInside(one.defect()) || !isInside(other.defect());
    }

    /** What is wrong inside a unit, a source or a setting, which the edits of the graph do not tell. */
    private static boolean isInside(Defect defect) {
        return defect instanceof Defect.Inside
                || defect instanceof Defect.SameAddress
                || defect instanceof Defect.WrongSetting
                || defect instanceof Defect.SourceDown
                || defect instanceof Defect.SourceSags
                || defect instanceof Defect.Terminated
                || defect instanceof Defect.Disturbed;
    }

    /** Both; an element that both take away or move is as the first has it. */
    public static Candidate of(Candidate one, Candidate other) {
        Candidate main = isInside(other.defect()) ? other : one;
        List<Change> changes = new ArrayList<>(one.changes());
        for (Change change : other.changes()) {
            if (one.changes().stream()
                    .noneMatch(before -> element(before) == element(change) && element(change) >= 0)) {
                changes.add(change);
            }
        }
        Set<String> rows = new LinkedHashSet<>(one.rows());
        rows.addAll(other.rows());
        return new Candidate(
                one.id() + "; and " + other.id(),
                main.kind(),
                main.defect(),
                one.title() + ", and " + other.title(),
                List.copyOf(rows),
                main.repair(),
                main.opening(),
                one.weight() * other.weight(),
                new TreeSet<>(),
                changes);
    }

    private static int element(Change change) {
        if (change instanceof Change.Opened opened) {
            return opened.element();
        }
        if (change instanceof Change.Closed closed) {
            return closed.element();
        }
        return change instanceof Change.Moved moved ? moved.element() : -1;
    }
}
