package ringout.check.form;

import java.util.Collection;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import ringout.graph.Gap;

/** Collects what a check lacks, so that one kind of datum makes one line however many units lack it. */
public final class Gaps {
    private final Map<String, Set<String>> byDatum = new TreeMap<>();

    /**
     * The cheapest way to get a datum.
     *
     * @param how in words
     * @param minutes for one of them
     */
    public record Way(String how, int minutes) {}

    /** Notes a missing datum. */
    public void add(String datum, String of) {
        byDatum.computeIfAbsent(datum, key -> new TreeSet<>()).add(of);
    }

    /** Notes missing data. */
    public void add(Collection<Gap> gaps) {
        gaps.forEach(gap -> add(gap.datum(), gap.of()));
    }

    /** Notes all that others lack. */
    public void addAll(Gaps others) {
        others.byDatum.forEach((datum, owners) -> owners.forEach(of -> add(datum, of)));
    }

    /** Whether nothing is missing. */
    public boolean isEmpty() {
        return byDatum.isEmpty();
    }

    /** Says all of it, one line a kind of datum. */
    public void tell(Outcomes out, Function<String, Way> ways) {
        byDatum.forEach((datum, owners) -> {
            Way way = ways.apply(datum);
            out.cannotTell(
                    datum + " of " + String.join(", ", owners),
                    way.how(),
                    way.minutes() * owners.size(),
                    owners.toArray(new String[0]));
        });
    }
}
