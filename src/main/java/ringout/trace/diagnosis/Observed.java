package ringout.trace.diagnosis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What has been done so far.
 *
 * @param readings outcomes in the order they were read; the same question may come again
 * @param opened names of the openings that stand open
 * @param vain names of the repair actions that were done and did not cure; the same may come again
 */
public record Observed(List<Reading> readings, Set<String> opened, List<String> vain) {
    /** Nothing done yet. */
    public static final Observed NOTHING = new Observed(List.of(), Set.of());

    /** Keeps its own copies, openings by name. */
    public Observed {
        readings = List.copyOf(readings);
        vain = List.copyOf(vain);
        opened = Collections.unmodifiableSet(new TreeSet<>(opened));
    }

    /** Readings and openings, no repair done. */
    public Observed(List<Reading> readings, Set<String> opened) {
        this(readings, opened, List.of());
    }

    /** With one more reading; what the question needs open then stands open. */
    public Observed with(Problem problem, Reading reading) {
        List<Reading> more = new ArrayList<>(readings);
        more.add(reading);
        Set<String> open = new TreeSet<>(opened);
        open.addAll(problem.questions().get(reading.question()).openings());
        return new Observed(more, open, vain);
    }

    /** With openings made. */
    public Observed open(List<String> names) {
        Set<String> open = new TreeSet<>(opened);
        open.addAll(names);
        return new Observed(readings, open, vain);
    }

    /** With a repair done and the fault still there; what the repair needs open then stands open. */
    public Observed inVain(RepairAction action) {
        List<String> more = new ArrayList<>(vain);
        more.add(action.name());
        return new Observed(readings, opened, more).open(action.openings());
    }

    /** Outcomes read of a question so far, in order. */
    public List<Integer> outcomesOf(int question) {
        return readings.stream()
                .filter(reading -> reading.question() == question)
                .map(Reading::outcome)
                .toList();
    }
}
