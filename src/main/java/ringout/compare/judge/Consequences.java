package ringout.compare.judge;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Fate;
import ringout.compare.difference.Kind;
import ringout.compare.match.Match;
import ringout.finding.Finding;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.model.Change;

/** What follows from a difference and the findings that come with it. */
final class Consequences {
    /** The check of readings speaks of the aircraft; the other checks of the record speak of the papers. */
    private static final String OF_READINGS = "X08";

    private final Match match;
    private final RetestPlan retests;

    Consequences(Match match, Circuit base, Circuit other) {
        this.match = match;
        this.retests = new RetestPlan(match, base, other);
    }

    Judged judge(Difference difference, List<Finding> appear, List<Finding> vanish) {
        Severity severity = appear.stream()
                .map(Consequences::weight)
                .min(Severity::compareTo)
                .orElse(difference.kind().severity());
        List<Retest> tests = retests.after(difference);
        return new Judged(
                difference,
                severity,
                appear,
                vanish,
                fate(difference, severity),
                change(difference),
                tests,
                new LapsedSignatures(match).of(difference));
    }

    /** A finding about the papers does not ground the aircraft: at most S3. */
    private static Severity weight(Finding finding) {
        boolean papers = finding.code().startsWith("X") && !finding.code().equals(OF_READINGS);
        boolean grave = finding.severity().atLeast(Severity.S2);
        return papers && grave ? Severity.S3 : finding.severity();
    }

    private Fate fate(Difference difference, Severity severity) {
        Fate usual = difference.kind().fate();
        if (difference.kind() == Kind.UNIT_GONE && !declaredAbsent(difference.object())) {
            return Fate.PUT_BACK;
        }
        boolean kept = usual == Fate.KEEP || usual == Fate.CONFIGURE || usual == Fate.CHANGE_RECORD;
        return kept && severity.atLeast(Severity.S2) ? Fate.PUT_BACK : usual;
    }

    private boolean declaredAbsent(String unit) {
        return declaredAbsent(match.base().aircraft(), unit)
                || declaredAbsent(match.other().aircraft(), unit);
    }

    private static boolean declaredAbsent(Aircraft aircraft, String unit) {
        return aircraft.states().stream()
                .flatMap(state -> state.absent().stream())
                .anyMatch(unit::equalsIgnoreCase);
    }

    /** The latest change on record of the other aircraft that names it, and that the base does not have. */
    private Optional<String> change(Difference difference) {
        Set<String> names = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        names.addAll(difference.touched().unitsThere());
        names.addAll(difference.touched().leadsThere());
        names.add(difference.object());
        List<String> known = match.base().aircraft().record().changes().stream()
                .map(Change::id)
                .toList();
        return match.other().aircraft().record().changes().stream()
                .filter(change -> !known.contains(change.id()))
                .filter(change -> change.objects().stream().anyMatch(names::contains))
                .reduce((first, later) -> later)
                .map(change -> change.id()
                        + change.reason().known().map(why -> ": " + why).orElse(""));
    }
}
