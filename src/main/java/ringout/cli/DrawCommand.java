package ringout.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ringout.draw.scene.Earlier;
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.present.json.LayoutJson;

/** {@code draw}: the sheets of an aircraft. */
@Command(name = "draw", description = "Draws the harness with the faults marked.", mixinStandardHelpOptions = true)
final class DrawCommand implements Callable<Integer> {
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

    @Option(
            names = "--sheet",
            paramLabel = "KIND",
            description =
                    "block, wiring, bus, power, return, place, map, loss, misplug, lead, face, finding or all (default: all).")
    private Drawings.Kind kind = Drawings.Kind.ALL;

    @Option(
            names = "--format",
            paramLabel = "F",
            description = "svg, png, pdf, html (one page for all) or all (default: all).")
    private Drawings.Format format = Drawings.Format.ALL;

    @Option(
            names = "--hold",
            paramLabel = "EARLIER",
            description = "Folder or layout.json of an earlier drawing: what was on it keeps its place.")
    private Optional<Path> hold = Optional.empty();

    /** The places to be held; nothing when the file told is none. */
    private Optional<Earlier> earlier() {
        if (hold.isEmpty()) {
            return Optional.of(Earlier.NONE);
        }
        Path file = Files.isDirectory(hold.get()) ? hold.get().resolve(Drawings.LAYOUT) : hold.get();
        try {
            return LayoutJson.read(Files.readString(file));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    @Override
    public Integer call() {
        Optional<Earlier> earlier = earlier();
        if (earlier.isEmpty()) {
            spec.commandLine()
                    .getErr()
                    .println("ringout: no layout of an earlier drawing in "
                            + hold.map(Path::toString).orElse(""));
            return ExitStatus.WRONG_INPUT;
        }
        Inputs inputs = question.inputs(spec.commandLine());
        Optional<Aircraft> read = inputs.aircraft(question.aircraft());
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        List<Circuit> circuits = inputs.circuits(read.get(), question.states());
        Drawings drawings = new Drawings(circuits.get(0), question.review(circuits), kind, earlier.get());
        OutputFolder files = new OutputFolder(folder);
        if (kind == Drawings.Kind.ALL) {
            LoadsCommand.addTo(files, circuits.get(0));
        }
        drawings.addTo(files, format);
        if (format.includes(Drawings.Format.PDF)) {
            drawings.addPdf(files, read.get());
        }
        if (format == Drawings.Format.HTML || (format == Drawings.Format.ALL && kind == Drawings.Kind.ALL)) {
            drawings.addPage(files, circuits);
        }
        files.write();
        files.names().forEach(name -> spec.commandLine().getOut().println(folder.resolve(name)));
        drawings.missing().forEach(line -> spec.commandLine().getErr().println("ringout: " + line));
        drawings.refused().forEach(line -> spec.commandLine().getErr().println("ringout: " + line));
        return drawings.refused().isEmpty() ? ExitStatus.CLEAN : ExitStatus.DEFECT;
    }
}
