package ringout.cli;

import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.State;
import ringout.present.json.FaultJson;
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
            "With --ask, or on a terminal without --silent, as a dialogue: it asks what is seen, then takes one reading after the"
                    + " other.",
            "Shares rest on weights by judgement and on readings computed from the list; nothing in it is certain.",
        },
        footer = {
            "",
            "  ringout fault samples/linewarden --silent GMC --lit GMC --alive others",
            "  ringout fault samples/linewarden --silent GMC --reading \"ohms H-L GMC-C1 mated=118\"",
            "  ringout fault samples/linewarden --ask",
            "  ringout fault samples/linewarden --silent GMC -o sheet",
            "",
            "Propellers off before any pack is plugged. Do not fly to see whether it comes back."
        },
        mixinStandardHelpOptions = true)
final class FaultCommand implements Callable<Integer> {
    private static final String OTHERS = "others";

    /** Forms the report can be written in. */
    enum Format {
        /** Blocks for a person. */
        TEXT,
        /** For other programs, and to take the search up again. */
        JSON
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            index = "0",
            paramLabel = "AIRCRAFT",
            description = "Folder of tables, workbook (.xlsx), one table, or JSON file.")
    private Path aircraft = Path.of("");

    @Option(names = "--silent", arity = "1..*", paramLabel = "UNIT", description = "Units that do not respond.")
    private List<String> silent = new ArrayList<>();

    @Option(
            names = "--alive",
            arity = "1..*",
            paramLabel = "UNIT",
            description =
                    "Units that respond; others for all that is not named silent. Without it all others are taken to"
                            + " respond.")
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

    @Option(
            names = "--priors",
            paramLabel = "FILE",
            description = "Table of own weights: kind of fault, or kind and circumstance; weight; source.")
    private Optional<Path> priors = Optional.empty();

    @Option(names = "--ask", description = "Ask and take readings line by line from standard input.")
    private boolean ask;

    @Option(names = "--resume", paramLabel = "FILE", description = "Take up a search that was saved.")
    private Optional<Path> resume = Optional.empty();

    @Option(names = "--format", paramLabel = "F", description = "text or json (default: text).")
    private Format format = Format.TEXT;

    @Option(
            names = {"-o", "--out"},
            paramLabel = "DIR",
            description = "Folder to write the fault-finding sheet into, as PDF and HTML, and the search as JSON.")
    private Optional<Path> folder = Optional.empty();

    @Mixin
    private Answering answering = new Answering();

    @Override
    public Integer call() {
        Inputs inputs = answering.inputs(spec.commandLine());
        Optional<Aircraft> read = inputs.aircraft(aircraft);
        if (read.isEmpty()) {
            return ExitStatus.WRONG_INPUT;
        }
        try {
            return searched(inputs, Wiring.of(read.get()));
        } catch (FaultNames.Unknown wrong) {
            throw new ParameterException(spec.commandLine(), String.valueOf(wrong.getMessage()), wrong);
        }
    }

    private int searched(Inputs inputs, Wiring wiring) throws FaultNames.Unknown {
        Optional<SavedSearch> saved = Optional.empty();
        if (resume.isPresent()) {
            saved = Optional.of(SavedSearch.read(resume.get()));
        }
        List<State> states = Circuit.states(wiring);
        String wanted = state.isEmpty() ? saved.map(SavedSearch::state).orElse("") : state;
        Circuit circuit = Circuit.of(wiring, wanted.isEmpty() ? states.get(0) : inputs.state(states, wanted));
        FaultNames names = new FaultNames(circuit);
        PriorTable table = priors.isPresent() ? PriorFile.read(priors.get()) : PriorTable.standard();
        Scene scene = saved.isPresent() ? saved.get().scene(names) : scene(names);
        boolean told = !scene.silent().isEmpty() || !scene.dark().isEmpty();
        if (ask || (!told && Optional.ofNullable(System.console()).isPresent())) {
            return asked(circuit, table, names, scene, saved);
        }
        if (!told) {
            throw new FaultNames.Unknown("say which unit is --silent or --dark, or --ask for the dialogue");
        }
        Diagnosis search = Diagnosis.find(circuit, scene, table)
                .orElseThrow(() ->
                        new FaultNames.Unknown("no fault of the model explains any of what is seen; look again who"
                                + " is silent, then look at the list"));
        return told(read(saved.isPresent() ? search.resumed(saved.get().progress(names)) : search, names));
    }

    private Diagnosis read(Diagnosis search, FaultNames names) throws FaultNames.Unknown {
        Diagnosis now = search;
        for (String reading : readings) {
            now = now.with(names.reading(reading));
        }
        return now;
    }

    private int asked(Circuit circuit, PriorTable table, FaultNames names, Scene scene, Optional<SavedSearch> saved)
            throws FaultNames.Unknown {
        BufferedReader in = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8));
        FaultDialogue dialogue =
                new FaultDialogue(circuit, table, in, spec.commandLine().getOut());
        Optional<Diagnosis> search = saved.isPresent() ? Diagnosis.find(circuit, scene, table) : dialogue.begin(scene);
        if (search.isEmpty()) {
            throw new FaultNames.Unknown("the questions were not answered: nothing is known of what is silent");
        }
        Diagnosis start = saved.isPresent() ? search.get().resumed(saved.get().progress(names)) : search.get();
        return end(dialogue.run(read(start, names)));
    }

    private int told(Diagnosis search) {
        FaultReport report = FaultReport.of(search);
        spec.commandLine().getOut().print(format == Format.JSON ? FaultJson.of(report) : FaultText.of(report));
        return end(search);
    }

    private int end(Diagnosis search) {
        folder.ifPresent(into -> FaultFiles.write(search, into, spec.commandLine()));
        boolean nothing = FaultReport.next(search) instanceof NextStep.NothingFits;
        return nothing ? ExitStatus.FINDINGS : ExitStatus.CLEAN;
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
