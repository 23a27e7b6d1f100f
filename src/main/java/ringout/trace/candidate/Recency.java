package ringout.trace.candidate;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.model.Aircraft;
import ringout.model.Change;
import ringout.model.Lead;

/**
 * What was touched since all was last good: rows marked so, what the latest changes name, and what the technician says.
 *
 * @param touched names of leads, units and plugs, in capitals
 * @param crash whether it began after a crash, a hard landing or a surge
 * @param update whether it began after an update of firmware or settings
 */
public record Recency(Set<String> touched, boolean crash, boolean update) {
    /** Changes this many days before the latest record still count as recent. Judgement, no source. */
    public static final int DAYS = 30;

    /** Keeps its own copy. */
    public Recency {
        touched = java.util.Collections.unmodifiableSet(new TreeSet<>(touched));
    }

    /** What the record of an aircraft tells. */
    public static Recency of(Aircraft aircraft) {
        return of(aircraft, Set.of(), false, false);
    }

    /**
     * What the record tells and what is said besides.
     *
     * @param said names of leads, units and plugs that were touched
     * @param crash whether it began after a crash, a hard landing or a surge
     * @param update whether it began after an update
     */
    public static Recency of(Aircraft aircraft, Collection<String> said, boolean crash, boolean update) {
        Set<String> touched = new TreeSet<>();
        said.forEach(name -> touched.add(fold(name)));
        for (Lead lead : aircraft.leads()) {
            if (lead.recent().is(true)) {
                touched.add(fold(lead.id()));
            }
        }
        Optional<LocalDate> latest = latest(aircraft);
        for (Change change : aircraft.record().changes()) {
            Optional<LocalDate> when = date(change.date().or(""));
            boolean recent = when.isPresent()
                    && latest.isPresent()
                    && !when.get().plusDays(DAYS).isBefore(latest.get());
            if (recent) {
                change.objects().forEach(object -> touched.add(fold(object)));
            }
        }
        return new Recency(touched, crash, update);
    }

    private static Optional<LocalDate> latest(Aircraft aircraft) {
        Optional<LocalDate> asOf = date(aircraft.record().asOf().or(""));
        return asOf.isPresent()
                ? asOf
                : aircraft.record().changes().stream()
                        .flatMap(change -> date(change.date().or("")).stream())
                        .max(LocalDate::compareTo);
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeParseException noDate) {
            return Optional.empty();
        }
    }

    private static String fold(String name) {
        return name.strip().toUpperCase(Locale.ROOT);
    }

    /** Whether a lead, unit or plug was touched. */
    public boolean has(String name) {
        return touched.contains(fold(name));
    }
}
