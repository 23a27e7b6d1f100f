package ringout.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringout.check.Catalogue;
import ringout.check.Review;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.model.Aircraft;
import ringout.present.json.FindingsJson;
import ringout.present.text.LineReport;
import ringout.present.text.TextReport;

/** {@code check}: what is wrong with an aircraft. */
@Command(name = "check", description = "Finds what is wrong, and what cannot be told.", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    /** Forms a report can be written in. */
    enum Format {
        TEXT,
        LINE,
        JSON
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "AIRCRAFT", description = "Folder of tables, or a JSON file.")
    private Path aircraft = Path.of("");

    @Option(names = "--state", paramLabel = "S", description = "Only this state; may be given several times.")
    private List<String> states = new ArrayList<>();

    @Option(names = "--format", paramLabel = "F", description = "text, line or json (default: text).")
    private Format format = Format.TEXT;

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

    @Override
    public Integer call() {
        Inputs inputs = new Inputs(spec.commandLine());
        Optional<Aircraft> read = inputs.aircraft(aircraft);
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        Report report = Review.of(inputs.circuits(read.get(), states), Catalogue.all(), today);
        spec.commandLine().getOut().print(written(read.get(), report));
        return status(report, exitAt);
    }

    private String written(Aircraft read, Report report) {
        return switch (format) {
            case TEXT -> TextReport.of(report);
            case LINE -> LineReport.of(report);
            case JSON -> FindingsJson.of(read, report, Version.NUMBER);
        };
    }

    static int status(Report report, Severity exitAt) {
        boolean found = report.headlines().stream()
                .anyMatch(headline -> headline.finding().severity().atLeast(exitAt));
        return found ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
    }
}
