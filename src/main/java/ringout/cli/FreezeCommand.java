package ringout.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringout.check.Review;
import ringout.check.record.SignedOpen;
import ringout.finding.Report;
import ringout.model.Aircraft;
import ringout.model.seal.Seal;
import ringout.model.shape.Shape;
import ringout.present.json.FrozenJson;

/** {@code freeze}: a revision that later readings, waivers and signatures can point to. */
@Command(
        name = "freeze",
        description = "Writes a revision with its hash; refuses while a signature stands on an open S1 or S2.",
        mixinStandardHelpOptions = true)
final class FreezeCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "AIRCRAFT", description = "Folder of tables, workbook (.xlsx), or JSON file.")
    private Path aircraft = Path.of("");

    @Option(
            names = {"-o", "--out"},
            paramLabel = "FILE",
            required = true,
            description = "The .json file to write; it must not be there yet.")
    private Path out = Path.of("");

    @Option(
            names = "--today",
            paramLabel = "YYYY-MM-DD",
            description = "Day waivers are held against (default: today).")
    private String today = LocalDate.now(ZoneId.systemDefault()).toString();

    @Mixin
    private Answering answering = new Answering();

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Optional<Aircraft> read = answering.inputs(spec.commandLine()).aircraft(aircraft);
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        Path target = out.toAbsolutePath().normalize();
        if (Files.exists(target) || !target.toString().endsWith(".json")) {
            err.println("ringout: " + out + ": "
                    + (Files.exists(target)
                            ? "there is something already; a frozen revision is never overwritten"
                            : "a frozen revision is a .json file"));
            return ExitStatus.WRONG_INPUT;
        }
        Aircraft whole = Shape.of(Aircraft.class).with(read.get(), "library", List.of());
        Report report = Review.of(whole, today);
        List<String> broken = SignedOpen.rules(whole, report);
        if (!broken.isEmpty()) {
            err.println("ringout: not frozen: " + broken.size()
                    + (broken.size() == 1 ? " signature rule is" : " signature rules are") + " broken");
            broken.forEach(rule -> err.println("  " + rule));
            return ExitStatus.FINDINGS;
        }
        Path folder = Optional.ofNullable(target.getParent()).orElse(target);
        Publisher.write(Map.of(String.valueOf(target.getFileName()), FrozenJson.of(whole)), folder, false);
        PrintWriter to = spec.commandLine().getOut();
        to.println(out);
        to.println("frozen " + Seal.ofList(whole).mark() + ": "
                + SignedOpen.open(report).size()
                + " open S1 or S2, " + report.headlines().size() + " findings, "
                + report.cannotTell().size() + " could not be decided, "
                + report.waived().size() + " waived");
        return ExitStatus.CLEAN;
    }
}
