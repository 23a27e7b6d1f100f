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
 */
public record Observed(List<Reading> readings, Set<String> opened) {
    /** Nothing done yet. */
    public static final Observed NOTHING = new Observed(List.of(), Set.of());

    /** Keeps its own copies, openings by name. */
    public Observed {
        readings = List.copyOf(readings);
        opened = Collections.unmodifiableSet(new TreeSet<>(opened));
    }

    /** With one more reading; what the question needs open then stands open. */
    public Observed with(Problem problem, Reading reading) {
        List<Reading> more = new ArrayList<>(readings);
        more.add(reading);
        Set<String> open = new TreeSet<>(opened);
        open.addAll(problem.questions().get(reading.question()).openings());
        return new Observed(more, open);
    }

    /** With openings made. */
    public Observed open(List<String> names) {
        Set<String> open = new TreeSet<>(opened);
        open.addAll(names);
        return new Observed(readings, open);
    }

    /** Outcomes read of a question so far, in order. */
    public List<Integer> outcomesOf(int question) {
        return readings.stream()
                .filter(reading -> reading.question() == question)
                .map(Reading::outcome)
                .toList();
    }
}
