package ringout.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code convert}: tables to JSON and back. */
@Command(
        name = "convert",
        description =
                "Turns tables, workbooks and JSON into one another; names, order and cells of the user's tables are kept.",
        mixinStandardHelpOptions = true)
final class ConvertCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            index = "0",
            paramLabel = "FROM",
            description = "Folder of tables, workbook (.xlsx), one table (.csv), or JSON file.")
    private Path from = Path.of("");

    @Parameters(
            index = "1",
            paramLabel = "TO",
            description = "Name ending in .json, .xlsx or .csv for one file, else a folder of tables.")
    private Path to = Path.of("");

    @Option(names = "--overwrite", description = "May replace what stands at TO.")
    private boolean overwrite;

    @Option(names = "--self-contained", description = "Takes the unit types of libraries into the result.")
    private boolean selfContained;

    @Mixin
    private Answering answering = new Answering();

    @Override
    public Integer call() {
        Conversion.Outcome outcome = Conversion.convert(
                from, to, new Conversion.Options(overwrite, selfContained), answering.given(spec.commandLine()));
        if (outcome instanceof Conversion.Outcome.Written written) {
            written.files().forEach(file -> spec.commandLine().getOut().println(file));
            written.plain()
                    .forEach(table -> spec.commandLine()
                            .getErr()
                            .println("ringout: " + table + " went out in plain heads, with the same meaning"));
            return ExitStatus.CLEAN;
        }
        spec.commandLine().getErr().println("ringout: nothing was written");
        ((Conversion.Outcome.Refused) outcome)
                .problems()
                .forEach(problem -> spec.commandLine().getErr().println("  " + problem.words()));
        return ExitStatus.WRONG_INPUT;
    }
}
