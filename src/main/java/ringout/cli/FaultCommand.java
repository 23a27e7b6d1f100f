package ringout.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.State;
import ringout.present.text.FaultText;
import ringout.trace.candidate.PriorTable;
import ringout.trace.session.Diagnosis;
import ringout.trace.session.FaultReport;
import ringout.trace.session.NextStep;
import ringout.trace.session.Scene;

/** {@code fault}: a module does not respond; what may be wrong, and which test to make next. */
@Command(
        name = "fault",
        description = {
            "A module does not respond: the faults that explain what is seen, with their shares, and the test that tells most a"
                    + " minute next, with its cost, what each outcome would mean, and when to stop measuring and go in.",
            "Shares rest on weights by judgement and on readings computed from the list; nothing in it is certain.",
        },
        footer = {
            "",
            "  ringout fault samples/linewarden --silent GMC --lit GMC --alive others",
            "  ringout fault samples/linewarden --silent GMC --reading \"ohms H-L FC-C2 mated=118\"",
            "",
            "Propellers off before any pack is plugged. Do not fly to see whether it comes back."
        },
        mixinStandardHelpOptions = true)
final class FaultCommand implements Callable<Integer> {
    private static final String OTHERS = "others";

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(index = "0", paramLabel = "AIRCRAFT", description = "Folder of tables, or a JSON file.")
    private Path aircraft = Path.of("");

    @Option(names = "--silent", arity = "1..*", paramLabel = "UNIT", description = "Units that do not respond.")
    private List<String> silent = new ArrayList<>();

    @Option(
            names = "--alive",
            arity = "1..*",
            paramLabel = "UNIT",
            description =
                    "Units that respond; others for all that is not named silent. Without it all others are taken to respond.")
    private List<String> alive = new ArrayList<>();

    @Option(names = "--lit", arity = "1..*", paramLabel = "UNIT", description = "Units with a light on.")
    private List<String> lit = new ArrayList<>();

    @Option(names = "--dark", arity = "1..*", paramLabel = "UNIT", description = "Units without any light.")
    private List<String> dark = new ArrayList<>();

    @Option(
            names = "--touched",
            arity = "1..*",
            paramLabel = "ROW",
            description = "Rows, plugs or units worked on last; crash or update for what went before.")
    private List<String> touched = new ArrayList<>();

    @Option(
            names = "--reading",
            paramLabel = "TEST=VALUE",
            description = "What a test showed, by the name the report gives it; may be given several times.")
    private List<String> readings = new ArrayList<>();

    @Option(names = "--state", paramLabel = "S", description = "State of the aircraft (default: the first declared).")
    private String state = "";

    @Override
    public Integer call() {
        Inputs inputs = new Inputs(spec.commandLine());
        Optional<Aircraft> read = inputs.aircraft(aircraft);
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        Wiring wiring = Wiring.of(read.get());
        List<State> states = Circuit.states(wiring);
        Circuit circuit = Circuit.of(wiring, state.isEmpty() ? states.get(0) : inputs.state(states, state));
        FaultReport report = FaultReport.of(search(circuit));
        spec.commandLine().getOut().print(FaultText.of(report));
        return report.next() instanceof NextStep.NothingFits ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
    }

    private Diagnosis search(Circuit circuit) {
        FaultNames names = new FaultNames(circuit);
        try {
            Scene scene = scene(names);
            if (scene.silent().isEmpty() && scene.dark().isEmpty()) {
                throw new FaultNames.Unknown("say which unit is --silent or --dark");
            }
            Diagnosis search = Diagnosis.find(circuit, scene, PriorTable.standard())
                    .orElseThrow(() -> new FaultNames.Unknown("no fault of the model explains any of what is seen;"
                            + " look again who is silent, then look at the list"));
            for (String reading : readings) {
                search = search.with(names.reading(reading));
            }
            return search;
        } catch (FaultNames.Unknown wrong) {
            throw new ParameterException(spec.commandLine(), String.valueOf(wrong.getMessage()), wrong);
        }
    }

    private Scene scene(FaultNames names) throws FaultNames.Unknown {
        List<String> responding = new ArrayList<>(alive);
        boolean others = responding.removeIf(OTHERS::equalsIgnoreCase);
        List<String> worked = new ArrayList<>(touched);
        boolean crash = worked.removeIf("crash"::equalsIgnoreCase);
        boolean update = worked.removeIf("update"::equalsIgnoreCase);
        Scene scene = Scene.silent(names.modules(silent))
                .withAlive(names.units(responding))
                .withLit(names.units(lit))
                .withDark(names.units(dark))
                .changed(names.objects(worked), crash, update);
        return others ? scene.withOthersAlive() : alive.isEmpty() ? scene.withOthers(Scene.Others.ASSUMED) : scene;
    }
}
