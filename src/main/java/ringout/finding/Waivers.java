package ringout.finding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.Waiver;

/**
 * Parts headlines into open and waived. A waiver holds when it has a real reason, the names it needs and an end, when its
 * finding may be waived at all, and as long as it has not ended, no row it rests on has changed and the value has not got
 * worse by more than 10 %.
 */
public final class Waivers {
    private static final Set<String> NEVER = Set.of("P01", "P02", "P03", "P09", "T03", "S10", "S11");
    private static final int SHORTEST_REASON = 20;
    private static final double WORSE = 1.10;

    private final Aircraft aircraft;
    private final String today;
    private final List<Headline> open = new ArrayList<>();
    private final List<Headline> waived = new ArrayList<>();
    private final List<LapsedWaiver> lapsed = new ArrayList<>();

    /**
     * Applies the waivers of an aircraft.
     *
     * @param headlines with their fingerprints
     * @param aircraft whose waivers count
     * @param today day they are held against, YYYY-MM-DD
     */
    public Waivers(List<Headline> headlines, Aircraft aircraft, String today) {
        this.aircraft = aircraft;
        this.today = today;
        Map<String, Waiver> byFinding = new HashMap<>();
        aircraft.waivers().forEach(waiver -> byFinding.put(waiver.finding(), waiver));
        for (Headline headline : headlines) {
            Optional<Waiver> waiver =
                    Optional.ofNullable(byFinding.remove(headline.finding().id()));
            Optional<String> broken = waiver.flatMap(given -> broken(headline, given));
            boolean holds = waiver.isPresent() && broken.isEmpty();
            (holds ? waived : open).add(headline);
            broken.ifPresent(
                    why -> lapsed.add(new LapsedWaiver(headline.finding().id(), why)));
        }
        aircraft.waivers().stream()
                .map(Waiver::finding)
                .filter(byFinding::containsKey)
                .forEach(id -> lapsed.add(new LapsedWaiver(id, "there is no such finding now")));
    }

    /** Headlines without a waiver that holds. */
    public List<Headline> open() {
        return List.copyOf(open);
    }

    /** Headlines with a waiver that holds. */
    public List<Headline> waived() {
        return List.copyOf(waived);
    }

    /** Waivers that do not hold, and why. */
    public List<LapsedWaiver> lapsed() {
        return List.copyOf(lapsed);
    }

    private Optional<String> broken(Headline headline, Waiver waiver) {
        return refused(headline.finding(), waiver)
                .or(() -> ended(waiver))
                .or(() -> changed(headline, waiver))
                .or(() -> worse(headline.finding().evidence(), waiver));
    }

    private static Optional<String> refused(Finding finding, Waiver waiver) {
        boolean grave = finding.severity().atLeast(Severity.S2);
        if (NEVER.contains(finding.code()) || finding.severity() == Severity.S1) {
            return Optional.of("refused: " + finding.code() + " " + finding.severity()
                    + " may not be waived, mend the list or the aircraft");
        }
        if (waiver.reason().or("").strip().length() < SHORTEST_REASON) {
            return Optional.of("refused: give a reason of at least " + SHORTEST_REASON + " letters in your own words");
        }
        if (!waiver.by().isKnown() || (grave && !waiver.second().isKnown())) {
            return Optional.of("refused: " + (grave ? "two names are needed for " + finding.severity() : "no name"));
        }
        if (grave && waiver.by().equals(waiver.second())) {
            return Optional.of("refused: the second name must be another person");
        }
        boolean end = waiver.ends().isKnown()
                || waiver.endsHours().isKnown()
                || !waiver.untilChanged().isEmpty();
        return end ? Optional.empty() : Optional.of("refused: it has no end (day, flight hours or next change)");
    }

    private Optional<String> ended(Waiver waiver) {
        String day = waiver.ends().or("");
        if (!day.isEmpty() && day.compareTo(today) < 0) {
            return Optional.of("ended on " + day);
        }
        double hours = waiver.endsHours().or(Double.POSITIVE_INFINITY);
        double flown = aircraft.record().flightHours().or(0.0);
        return flown > hours
                ? Optional.of(String.format(Locale.ROOT, "ended at %.0f flight hours, %.0f flown", hours, flown))
                : Optional.empty();
    }

    private static Optional<String> changed(Headline headline, Waiver waiver) {
        String print = waiver.fingerprint().or(headline.fingerprint());
        return print.equals(headline.fingerprint())
                ? Optional.empty()
                : Optional.of("a row it rests on has changed (fingerprint " + headline.fingerprint() + " now, " + print
                        + " then)");
    }

    private static Optional<String> worse(Evidence evidence, Waiver waiver) {
        OptionalDouble now = evidence.value();
        if (now.isEmpty() || !waiver.value().isKnown() || evidence.limit().isEmpty()) {
            return Optional.empty();
        }
        double then = waiver.value().or(0.0);
        double limit = evidence.limit().getAsDouble();
        boolean further = Math.abs(now.getAsDouble() - limit) > Math.abs(then - limit);
        double ratio = Math.abs(then) < Double.MIN_NORMAL ? Double.POSITIVE_INFINITY : now.getAsDouble() / then;
        boolean tenth = ratio > WORSE || ratio < 1 / WORSE;
        return further && tenth
                ? Optional.of(String.format(
                        Locale.ROOT, "worse by more than 10 %%: %.4g then, %.4g now", then, now.getAsDouble()))
                : Optional.empty();
    }
}
