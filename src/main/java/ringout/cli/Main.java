package ringout.cli;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program {@code ringout}: reads the call, runs one command, ends with an {@link ExitStatus}. */
@Command(
        name = "ringout",
        mixinStandardHelpOptions = true,
        version = "ringout " + Version.NUMBER,
        synopsisSubcommandLabel = "COMMAND",
        description = "Reads an aircraft's from-to list, finds what is wrong and draws the harness.",
        exitCodeOnInvalidInput = ExitStatus.WRONG_INPUT,
        exitCodeOnExecutionException = ExitStatus.DEFECT)
public final class Main implements Runnable {
    /** Every command, in the order the help shows them. */
    private static final CommandTable COMMANDS = new CommandTable()
            .with("review", ReviewCommand::new)
            .with("check", CheckCommand::new)
            .with("draw", DrawCommand::new)
            .with("probe", ProbeCommand::new)
            .with("fault", FaultCommand::new)
            .with("loads", LoadsCommand::new)
            .with("plan", PlanCommand::new)
            .with("pack", PackCommand::new)
            .with("compare", CompareCommand::new)
            .with("unseen", UnseenCommand::new)
            .with("ask", AskCommand::new)
            .with("convert", ConvertCommand::new)
            .with("record", RecordCommand::new)
            .with("freeze", FreezeCommand::new)
            .with("checks", ChecksCommand::new)
            .with("why", WhyCommand::new);

    @Spec
    private CommandSpec spec = CommandSpec.create();

    private Main() {}

    /**
     * Runs the command line and ends the process.
     *
     * @param args the words after the program's name
     */
    public static void main(String[] args) {
        PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
        PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
        int status = run(out, err, args);
        out.flush();
        err.flush();
        System.exit(status);
    }

    /**
     * Runs the command line without ending the process.
     *
     * @param out takes results
     * @param err takes progress and complaints
     * @param args the words after the program's name
     * @return the exit status, one of {@link ExitStatus}
     */
    public static int run(PrintWriter out, PrintWriter err, String... args) {
        return run(COMMANDS, out, err, args);
    }

    static int run(CommandTable commands, PrintWriter out, PrintWriter err, String... args) {
        return commands.parserFor(new Main(), args)
                .setOut(out)
                .setErr(err)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setParameterExceptionHandler(Complaints::wrongCall)
                .setExecutionExceptionHandler(Complaints::defect)
                .execute(args);
    }

    /** A call without a command is wrong: says so and points at the help. */
    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "no command given");
    }
}
