package ringout.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;

/** What every command that reviews is asked: which aircraft, which states, which day, which severity counts. */
final class Question {
    @Parameters(paramLabel = "AIRCRAFT", description = "Folder of tables, workbook (.xlsx), one table, or JSON file.")
    private Path aircraft = Path.of("");

    @Option(names = "--state", paramLabel = "S", description = "Only this state; may be given several times.")
    private List<String> states = new ArrayList<>();

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

    @Mixin
    private Answering answering = new Answering();

    /** The reader of what the command is called with. */
    Inputs inputs(CommandLine line) {
        return new Inputs(line, answering.given(line));
    }

    Path aircraft() {
        return aircraft;
    }

    List<String> states() {
        return states;
    }

    String today() {
        return today;
    }

    /** Reviews circuits, one a state, with the whole catalogue. */
    Report review(List<Circuit> circuits) {
        return Review.of(circuits, Catalogue.all(), today);
    }

    /** The exit status a report earns. */
    int status(Report report) {
        boolean found = report.headlines().stream()
                .anyMatch(headline -> headline.finding().severity().atLeast(exitAt));
        return found ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
    }
}
