package ringout.cli;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import picocli.CommandLine.Option;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;

/** How a review is judged: which day, and which severity counts for the exit status. */
final class Judging {
    @Option(
            names = "--exit-at",
            paramLabel = "S1..S5",
            description = "Severity that makes the exit status 1 (default: S3).")
    private Severity exitAt = Severity.S3;

    @Option(
            names = "--today",
            paramLabel = "YYYY-MM-DD",
            description = "Day waivers are held against (default: today).")
    private String today = LocalDate.now(ZoneId.systemDefault()).toString();

    String today() {
        return today;
    }

    /** Reviews circuits, one a state, with the whole catalogue. */
    Report review(List<Circuit> circuits) {
        return Review.of(circuits, Catalogue.all(), today);
    }

    /** The exit status when something of a severity was found. */
    boolean counts(Severity severity) {
        return severity.atLeast(exitAt);
    }
}
