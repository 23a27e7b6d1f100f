package ringout.random;

import java.util.List;
import java.util.Set;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;

/** What a report says, in short lines. */
final class Told {
    /**
     * Voltage drop and voltage under load, which these aircraft are not yet made for: a load behind a converter with a 0V of its
     * own is told 10.5 V where 24 V are given, and leads are not sized for their drop.
     */
    private static final Set<String> APART = Set.of("P17", "P18");

    private Told() {}

    /** What the checks say; those of {@link #APART} aside. */
    static Report review(Aircraft aircraft) {
        List<Check> checks = Catalogue.all().stream()
                .filter(check -> !APART.contains(
                        check.getClass().getAnnotation(CheckInfo.class).code()))
                .toList();
        return Review.of(Circuit.all(Wiring.of(aircraft)), checks, Review.NO_DAY);
    }

    /** Findings one must not hand over with. */
    static List<String> heavy(Report report) {
        return report.headlines().stream()
                .map(headline -> headline.finding())
                .filter(finding -> finding.severity().atLeast(Severity.S3))
                .map(Told::line)
                .toList();
    }

    static String line(Finding finding) {
        return finding.severity() + " " + finding.code() + " " + finding.title() + " " + finding.objects();
    }

    /** What could not be decided. */
    static List<String> open(Report report) {
        return report.cannotTell().stream()
                .map(open -> open.code() + " " + open.missing() + " of " + open.objects())
                .toList();
    }
}
