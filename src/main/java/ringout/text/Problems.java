package ringout.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Collects all problems of a run. */
public final class Problems {
    private final List<Problem> all = new ArrayList<>();

    /** Adds one. */
    public void add(Problem problem) {
        all.add(problem);
    }

    /** Adds one from its parts. */
    public void add(Span at, String message, String hint) {
        all.add(new Problem(at, message, hint));
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return all.isEmpty();
    }

    /** All problems in the order of the files. */
    public List<Problem> sorted() {
        return all.stream()
                .sorted(Comparator.comparing(Problem::at).thenComparing(Problem::message))
                .distinct()
                .toList();
    }
}
