package ringout.random;

import java.util.List;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.finding.Severity;

/** What a report says, in short lines. */
final class Told {
    private Told() {}

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
