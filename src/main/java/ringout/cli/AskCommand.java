package ringout.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringout.present.csv.QuestionsCsv;
import ringout.present.text.QuestionsText;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;

/** {@code ask}: everything a list leaves open, in one list. */
@Command(
        name = "ask",
        description =
                "Lists what only the owner of a from-to list can tell, cell by cell, and what was taken as usual.",
        mixinStandardHelpOptions = true)
final class AskCommand implements Callable<Integer> {
    /** Forms the list can be written in. */
    enum Format {
        /** For a person, with the assumptions. */
        TEXT,
        /** To fill in the last column and give it back with --answers. */
        CSV
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            paramLabel = "AIRCRAFT",
            description = "Workbook (.xlsx), table (.csv), folder of tables, or JSON file.")
    private Path aircraft = Path.of("");

    @Option(names = "--format", paramLabel = "F", description = "text or csv (default: text).")
    private Format format = Format.TEXT;

    @Mixin
    private Answering answering = new Answering();

    @Override
    public Integer call() {
        ReadResult read = AircraftReader.read(aircraft, answering.given(spec.commandLine()));
        spec.commandLine()
                .getOut()
                .print(
                        format == Format.CSV
                                ? QuestionsCsv.of(read.questions())
                                : QuestionsText.of(read.questions(), read.assumptions()));
        return read.ok() ? ExitStatus.CLEAN : ExitStatus.WRONG_INPUT;
    }
}
