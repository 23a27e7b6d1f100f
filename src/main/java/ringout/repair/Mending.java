package ringout.repair;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.check.Review;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.model.Aircraft;

/**
 * A list mended as far as repairs go: one headline after the other, each reviewed before the next, so that no two repairs
 * meet in one field unseen.
 *
 * @param repairs the repairs made, in order
 * @param mended the list after all of them
 * @param after its review
 */
public record Mending(List<Repair> repairs, Aircraft mended, Report after) {
    /** Keeps its own copy. */
    public Mending {
        repairs = List.copyOf(repairs);
    }

    /**
     * Mends a list.
     *
     * @param aircraft the list
     * @param report its review in all states
     * @param today day the waivers are held against, YYYY-MM-DD, or {@link Review#NO_DAY}
     */
    public static Mending of(Aircraft aircraft, Report report, String today) {
        List<Repair> repairs = new ArrayList<>();
        Set<String> beyond = new HashSet<>();
        Aircraft list = aircraft;
        Report now = report;
        Optional<Headline> next = next(now, beyond);
        while (next.isPresent()) {
            Optional<Repair> repair = RepairSearch.of(list, now, next.get(), today);
            if (repair.isPresent()) {
                repairs.add(repair.get());
                list = repair.get().mended();
                now = Review.of(list, today);
            }
            beyond.add(next.get().finding().id());
            next = next(now, beyond);
        }
        return new Mending(repairs, list, now);
    }

    private static Optional<Headline> next(Report report, Set<String> beyond) {
        return report.headlines().stream()
                .filter(headline -> !beyond.contains(headline.finding().id()))
                .findFirst();
    }
}
