package ringout.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringout.model.Aircraft;
import ringout.present.text.UnseenText;
import ringout.sheet.fault.Unseen;

/** {@code unseen}: one's own checklist, tested against every single fault. */
@Command(
        name = "unseen",
        description =
                "Holds the planned tests of the list against every single fault: which would pass unseen, which line to"
                        + " add, and where a test point tells most. Computed from the list; nothing in it is measured.",
        mixinStandardHelpOptions = true)
final class UnseenCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "AIRCRAFT", description = "Folder of tables, workbook (.xlsx), one table, or JSON file.")
    private Path aircraft = Path.of("");

    @Option(names = "--state", paramLabel = "S", description = "State of the aircraft (default: the first declared).")
    private String state = "";

    @Option(names = "--lines", paramLabel = "N", description = "At most so many lines to add (default: 8).")
    private int lines = 8;

    @Option(names = "--points", paramLabel = "N", description = "At most so many test points (default: 5).")
    private int points = 5;

    @Mixin
    private Answering answering = new Answering();

    @Override
    public Integer call() {
        Inputs inputs = answering.inputs(spec.commandLine());
        Optional<Aircraft> read = inputs.aircraft(aircraft);
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        List<String> wanted = state.isEmpty() ? List.of() : List.of(state);
        Unseen unseen = Unseen.of(inputs.circuits(read.get(), wanted).get(0), lines, points);
        spec.commandLine().getOut().print(UnseenText.of(unseen));
        return unseen.coverage().unseen().isEmpty() ? ExitStatus.CLEAN : ExitStatus.FINDINGS;
    }
}
