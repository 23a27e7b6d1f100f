package ringout.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import ringout.finding.Report;
import ringout.graph.Circuit;

/** What every command that reviews is asked: which aircraft, which states, which day, which severity counts. */
final class Question {
    @Parameters(paramLabel = "AIRCRAFT", description = "Folder of tables, workbook (.xlsx), one table, or JSON file.")
    private Path aircraft = Path.of("");

    @Option(names = "--state", paramLabel = "S", description = "Only this state; may be given several times.")
    private List<String> states = new ArrayList<>();

    @Mixin
    private Judging judging = new Judging();

    @Mixin
    private Answering answering = new Answering();

    /** The reader of what the command is called with. */
    Inputs inputs(CommandLine line) {
        return answering.inputs(line);
    }

    Path aircraft() {
        return aircraft;
    }

    List<String> states() {
        return states;
    }

    String today() {
        return judging.today();
    }

    /** Reviews circuits, one a state, with the whole catalogue. */
    Report review(List<Circuit> circuits) {
        return judging.review(circuits);
    }

    /** The exit status a report earns. */
    int status(Report report) {
        boolean found = report.headlines().stream()
                .anyMatch(headline -> judging.counts(headline.finding().severity()));
        return found ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
    }
}
