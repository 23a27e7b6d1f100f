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
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.present.text.LoadSheetCsv;
import ringout.present.text.LoadSheetText;
import ringout.sheet.LoadSheet;
import ringout.sheet.LoadSheets;

/** {@code loads}: what every rail must give and may give, and how long the packs last. */
@Command(
        name = "loads",
        description = "Electrical loads per rail with margin, the packs under load, and the endurance. Computed,"
                + " not measured.",
        mixinStandardHelpOptions = true)
final class LoadsCommand implements Callable<Integer> {
    /** Forms the sheet can be written in. */
    enum Format {
        /** For a person. */
        TEXT,
        /** For a spreadsheet. */
        CSV
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "AIRCRAFT", description = "Folder of tables, workbook (.xlsx), one table, or JSON file.")
    private Path aircraft = Path.of("");

    @Option(names = "--state", paramLabel = "S", description = "State of the aircraft (default: the first declared).")
    private String state = "";

    @Option(names = "--format", paramLabel = "F", description = "text or csv (default: text).")
    private Format format = Format.TEXT;

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
        Circuit circuit = inputs.circuits(read.get(), wanted).get(0);
        LoadSheet sheet = LoadSheets.of(circuit);
        spec.commandLine().getOut().print(format == Format.CSV ? LoadSheetCsv.of(sheet) : LoadSheetText.of(sheet));
        return ExitStatus.CLEAN;
    }

    /** Puts the sheet among other files, in both forms. */
    static void addTo(OutputFolder files, Circuit circuit) {
        LoadSheet sheet = LoadSheets.of(circuit);
        files.with("loads.txt", LoadSheetText.of(sheet)).with("loads.csv", LoadSheetCsv.of(sheet));
    }
}
