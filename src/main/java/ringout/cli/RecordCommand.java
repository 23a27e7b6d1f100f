package ringout.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringout.read.ReadResult;
import ringout.read.source.DiskFolder;
import ringout.read.take.Taken;
import ringout.read.take.TakenReader;
import ringout.text.Problem;

/** {@code record}: takes back what was written on the pages. */
@Command(
        name = "record",
        description = "Puts ticks, readings, signatures, photos and notes written on pages on record; nothing is lost.",
        mixinStandardHelpOptions = true)
final class RecordCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "AIRCRAFT", description = "Folder of tables, workbook (.xlsx), or JSON file.")
    private Path aircraft = Path.of("");

    @Option(
            names = "--take",
            paramLabel = "FILE",
            arity = "1..*",
            required = true,
            description = "Files that pages have written (schemas/taken.schema.json), in the order to take them.")
    private List<Path> files = new ArrayList<>();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "OUT",
            required = true,
            description = "Name ending in .json or .xlsx for one file, else a folder of tables.")
    private Path out = Path.of("");

    @Option(names = "--overwrite", description = "May replace what stands at OUT.")
    private boolean overwrite;

    @Mixin
    private Answering answering = new Answering();

    @Override
    public Integer call() {
        Optional<ReadResult> read = answering.inputs(spec.commandLine()).read(aircraft);
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        List<String> names = files.stream().map(Path::toString).toList();
        Taken taken = TakenReader.take(read.get().aircraft(), new DiskFolder(Path.of("")), names);
        if (!taken.problems().isEmpty()) {
            return refused(taken.problems());
        }
        Conversion.Outcome outcome =
                Conversion.write(read.get(), taken.aircraft(), aircraft, out, new Conversion.Options(overwrite, false));
        if (outcome instanceof Conversion.Outcome.Refused refused) {
            return refused(refused.problems());
        }
        PrintWriter to = spec.commandLine().getOut();
        ((Conversion.Outcome.Written) outcome).files().forEach(to::println);
        to.println(taken.added() + " taken, " + taken.known() + " on record already, "
                + taken.conflicts().size() + " to look at");
        taken.conflicts().forEach(conflict -> to.println("  " + conflict));
        return taken.conflicts().isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
    }

    private int refused(List<Problem> problems) {
        PrintWriter err = spec.commandLine().getErr();
        err.println("ringout: nothing was taken or written");
        problems.forEach(problem -> err.println("  " + problem.words()));
        return ExitStatus.WRONG_INPUT;
    }
}
