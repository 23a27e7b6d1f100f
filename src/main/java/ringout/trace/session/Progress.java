package ringout.trace.session;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * What was done in a search so far.
 *
 * @param readings what was read, in order
 * @param opened lids that are off
 * @param skipped tests that cannot be made here and now
 * @param vain repair actions that were done and cured nothing
 */
public record Progress(
        List<TestReading> readings, SortedSet<String> opened, SortedSet<String> skipped, SortedSet<String> vain) {
    /** Nothing done yet. */
    public static final Progress NONE = new Progress(List.of(), new TreeSet<>(), new TreeSet<>(), new TreeSet<>());

    /** Keeps its own copies. */
    public Progress {
        readings = List.copyOf(readings);
        opened = Names.copy(opened);
        skipped = Names.copy(skipped);
        vain = Names.copy(vain);
    }

    Progress read(TestReading reading) {
        List<TestReading> more = new ArrayList<>(readings);
        more.add(reading);
        return new Progress(more, opened, skipped, vain);
    }

    Progress back() {
        int last = Math.max(0, readings.size() - 1);
        return new Progress(readings.subList(0, last), opened, skipped, vain);
    }

    Progress open(Iterable<String> lids) {
        return new Progress(readings, plus(opened, lids), skipped, vain);
    }

    Progress skip(String test) {
        return new Progress(readings, opened, plus(skipped, List.of(test)), vain);
    }

    Progress inVain(String repair) {
        return new Progress(readings, opened, skipped, plus(vain, List.of(repair)));
    }

    private static SortedSet<String> plus(SortedSet<String> some, Iterable<String> more) {
        SortedSet<String> all = new TreeSet<>(some);
        more.forEach(one -> all.add(one));
        return all;
    }
}
