package ringout.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ringout.check.Review;
import ringout.finding.Report;
import ringout.model.Aircraft;
import ringout.present.json.FindingsJson;
import ringout.present.lines.RepairChange;
import ringout.present.sarif.SarifReport;
import ringout.present.text.LineReport;
import ringout.present.text.RepairText;
import ringout.present.text.TextReport;
import ringout.read.ReadResult;
import ringout.repair.Mending;
import ringout.text.Problem;

/** {@code check}: what is wrong with an aircraft. */
@Command(name = "check", description = "Finds what is wrong, and what cannot be told.", mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {
    /** Forms a report can be written in. */
    enum Format {
        /** Blocks for a person. */
        TEXT,
        /** One line each for editors and search. */
        LINE,
        /** For other programs. */
        JSON,
        /** For editors and build servers, by the open standard SARIF 2.1.0. */
        SARIF
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private Question question = new Question();

    @Option(names = "--format", paramLabel = "F", description = "text, line, json or sarif (default: text).")
    private Format format = Format.TEXT;

    @Option(
            names = "--repair",
            paramLabel = "TO",
            description = "Writes the list mended as far as small changes clear findings: a new folder or .json file.")
    private Optional<Path> repair = Optional.empty();

    @Override
    public Integer call() {
        Inputs inputs = question.inputs(spec.commandLine());
        Optional<ReadResult> read = inputs.read(question.aircraft());
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        Aircraft aircraft = read.get().aircraft();
        Report report = question.review(inputs.circuits(aircraft, question.states()));
        if (repair.isEmpty()) {
            spec.commandLine().getOut().print(written(aircraft, report, List.of()));
            return question.status(report);
        }
        return repaired(read.get(), report, repair.get());
    }

    /** Repairs are tried in all states, whichever were asked for. */
    private int repaired(ReadResult read, Report report, Path to) {
        Report whole = Review.of(read.aircraft(), question.today());
        Repairs repairs = new Repairs(read, question.aircraft(), Mending.of(read.aircraft(), whole, question.today()));
        Optional<List<Problem>> refused = repairs.write(to);
        if (refused.isPresent()) {
            spec.commandLine().getErr().println("ringout: nothing was written");
            refused.get().forEach(problem -> spec.commandLine().getErr().println("  " + problem.words()));
            return ExitStatus.WRONG_INPUT;
        }
        spec.commandLine().getOut().print(written(read.aircraft(), report, repairs.changes()));
        if (format == Format.TEXT) {
            spec.commandLine()
                    .getOut()
                    .print("\n" + RepairText.of(repairs.mending(), repairs.difference(), to.toString()));
        }
        return question.status(report);
    }

    private String written(Aircraft read, Report report, List<RepairChange> repairs) {
        return switch (format) {
            case TEXT -> TextReport.of(report);
            case LINE -> LineReport.of(report);
            case JSON -> FindingsJson.of(read, report, repairs, Version.NUMBER);
            case SARIF -> SarifReport.of(report, repairs, Version.NUMBER);
        };
    }
}
