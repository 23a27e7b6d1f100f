package ringout.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Option;
import ringout.read.AnswersReader;
import ringout.read.intake.Answers;
import ringout.read.source.DiskFolder;

/** The option that gives back a list of questions with answers in it. */
final class Answering {
    @Option(
            names = "--answers",
            paramLabel = "FILE",
            description = "Answers to what was asked about a list: the questions of `ask --format csv`, filled in.")
    private Optional<Path> file = Optional.empty();

    /** The reader of what the command is called with. */
    Inputs inputs(CommandLine line) {
        return new Inputs(line, given(line));
    }

    /** The answers; a file that holds none is a wrong call. */
    Answers given(CommandLine line) {
        if (file.isEmpty()) {
            return Answers.NONE;
        }
        Path whole = file.get().toAbsolutePath().normalize();
        Path parent = whole.getParent();
        AnswersReader.Result read = AnswersReader.read(
                new DiskFolder(parent == null ? whole : parent), String.valueOf(whole.getFileName()));
        read.problems().stream().findFirst().ifPresent(problem -> {
            throw new CommandLine.ParameterException(line, "the answers: " + problem.words());
        });
        return read.answers();
    }
}
