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
import picocli.CommandLine.Spec;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.present.json.FindingsJson;
import ringout.present.text.TextReport;

/** {@code review}: findings and drawings at once. */
@Command(
        name = "review",
        description = "Everything at once: findings on the terminal, findings and sheets as files.",
        mixinStandardHelpOptions = true)
final class ReviewCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Mixin
    private Question question = new Question();

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            required = true,
            description = "Folder to write into.")
    private Path folder = Path.of("");

    @Override
    public Integer call() {
        Inputs inputs = question.inputs(spec.commandLine());
        Optional<Aircraft> read = inputs.aircraft(question.aircraft());
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        List<Circuit> circuits = inputs.circuits(read.get(), question.states());
        Report report = question.review(circuits);
        PrintWriter out = spec.commandLine().getOut();
        String text = TextReport.of(report);
        out.print(text);
        out.flush();
        Drawings drawings = new Drawings(circuits.get(0), report, Drawings.Kind.ALL);
        OutputFolder files = new OutputFolder(folder)
                .with("findings.json", FindingsJson.of(read.get(), report, Version.NUMBER))
                .with("findings.txt", text);
        LoadsCommand.addTo(files, circuits.get(0));
        drawings.addTo(files, Drawings.Format.ALL);
        drawings.addPdf(files, read.get());
        drawings.addPage(files, circuits);
        files.write();
        drawings.missing().forEach(line -> spec.commandLine().getErr().println("ringout: " + line));
        List<String> refused = new ArrayList<>(drawings.refused());
        refused.forEach(line -> spec.commandLine().getErr().println("ringout: " + line));
        return refused.isEmpty() ? question.status(report) : ExitStatus.DEFECT;
    }
}
