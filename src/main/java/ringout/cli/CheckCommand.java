package ringout.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ringout.finding.Report;
import ringout.model.Aircraft;
import ringout.present.json.FindingsJson;
import ringout.present.sarif.SarifReport;
import ringout.present.text.LineReport;
import ringout.present.text.TextReport;

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

    @Override
    public Integer call() {
        Inputs inputs = new Inputs(spec.commandLine());
        Optional<Aircraft> read = inputs.aircraft(question.aircraft());
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        Report report = question.review(inputs.circuits(read.get(), question.states()));
        spec.commandLine().getOut().print(written(read.get(), report));
        return question.status(report);
    }

    private String written(Aircraft read, Report report) {
        return switch (format) {
            case TEXT -> TextReport.of(report);
            case LINE -> LineReport.of(report);
            case JSON -> FindingsJson.of(read, report, Version.NUMBER);
            case SARIF -> SarifReport.of(report, Version.NUMBER);
        };
    }
}
