package ringout.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
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
import ringout.present.json.ProbeJson;
import ringout.present.text.BusTableText;
import ringout.present.text.OhmsText;
import ringout.present.text.VoltsText;
import ringout.solve.meter.BusQuestion;
import ringout.solve.meter.BusTable;
import ringout.solve.meter.OhmsAnswer;
import ringout.solve.meter.OhmsQuestion;
import ringout.solve.meter.VoltsAnswer;
import ringout.solve.meter.VoltsQuestion;

/** {@code probe}: what a meter should read, and what another reading would mean. */
@Command(
        name = "probe",
        description = {
            "What a meter should read between two points, and what any other reading would mean: ohms with the power off,"
                    + " or volts with --power on.",
            "Or, with the name of a bus instead of two points, the readings at every plug of it, mated and pulled, for"
                    + " every single fault of its terminators and pairs.",
            "",
            "A point is UNIT-PLUG-PIN (by number, name, or H and L), LEAD@UNIT-PLUG-PIN for the lead's side of a contact,"
                    + " or the name of a joint.",
        },
        footer = {
            "",
            "  ringout probe samples/linewarden FC-C2-H FC-C2-L",
            "  ringout probe samples/linewarden W68@GMC-C1-H W68@GMC-C1-L --pull GMC-C1",
            "  ringout probe samples/linewarden CAN2",
            "  ringout probe samples/linewarden LGC-PWR-1 LGC-PWR-2 --power on",
            "",
            "Ohms only with power off, packs out, propellers off and capacitors down."
        },
        mixinStandardHelpOptions = true)
final class ProbeCommand implements Callable<Integer> {
    /** Forms an answer can be written in. */
    enum Format {
        /** Blocks for a person. */
        TEXT,
        /** One line a reading. */
        LINE,
        /** For other programs. */
        JSON
    }

    /** Whether the power is on. */
    enum Power {
        /** Ohms. */
        OFF,
        /** Volts. */
        ON
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(
            index = "0",
            paramLabel = "AIRCRAFT",
            description = "Folder of tables, workbook (.xlsx), one table, or JSON file.")
    private Path aircraft = Path.of("");

    @Parameters(
            index = "1..*",
            arity = "0..*",
            paramLabel = "POINT",
            description = "Two points, or one bus (by name, or a plug on it).")
    private List<String> points = new ArrayList<>();

    @Option(names = "--bus", paramLabel = "BUS", description = "The bus whose table is wanted.")
    private String bus = "";

    @Option(names = "--state", paramLabel = "S", description = "State of the aircraft (default: the first declared).")
    private String state = "";

    @Option(names = "--pull", paramLabel = "PLUG", description = "Plug to pull first; may be given several times.")
    private List<String> pulls = new ArrayList<>();

    @Option(
            names = "--power",
            paramLabel = "P",
            description = "off for ohms, on for volts (default: off). With the power on, POINT 1 takes the red lead.")
    private Power power = Power.OFF;

    @Option(
            names = "--event",
            paramLabel = "E",
            description = "Event that goes on, for volts (default: loads at rest).")
    private String event = "";

    @Option(names = "--format", paramLabel = "F", description = "text, line or json (default: text).")
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
        Wiring wiring = Wiring.of(read.get());
        List<State> states = Circuit.states(wiring);
        State asked = state.isEmpty() ? states.get(0) : inputs.state(states, state);
        ProbeTargets targets = new ProbeTargets(spec.commandLine(), wiring);
        Circuit circuit = targets.circuit(asked, pulls);
        spec.commandLine().getOut().print(written(targets, circuit, states));
        return ExitStatus.CLEAN;
    }

    private String written(ProbeTargets targets, Circuit circuit, List<State> states) {
        if (power == Power.OFF && !event.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "an event changes volts, not ohms: say --power on");
        }
        if (bus.isEmpty() && points.size() == 1) {
            return table(targets, circuit, points.get(0));
        }
        if (!bus.isEmpty() && points.isEmpty()) {
            return table(targets, circuit, bus);
        }
        if (!bus.isEmpty() || points.size() != 2) {
            throw new ParameterException(
                    spec.commandLine(), "name two points, or one bus; named here: " + points.size() + " points");
        }
        int a = targets.point(points.get(0));
        int b = targets.point(points.get(1));
        if (power == Power.ON) {
            return written(VoltsQuestion.ask(circuit, a, b, targets.event(event)));
        }
        List<Circuit> others = states.stream()
                .filter(other -> !other.name().equals(circuit.state().name()))
                .map(other -> targets.circuit(other, pulls))
                .toList();
        return written(OhmsQuestion.ask(circuit, a, b, others));
    }

    private String written(OhmsAnswer answer) {
        return switch (format) {
            case TEXT -> OhmsText.of(answer);
            case LINE -> OhmsText.line(answer);
            case JSON -> ProbeJson.of(answer);
        };
    }

    private String written(VoltsAnswer answer) {
        return switch (format) {
            case TEXT -> VoltsText.of(answer);
            case LINE -> VoltsText.line(answer);
            case JSON -> ProbeJson.of(answer);
        };
    }

    private String table(ProbeTargets targets, Circuit circuit, String name) {
        if (power == Power.ON) {
            throw new ParameterException(
                    spec.commandLine(), "the table of a bus is of ohms with the power off; name two points for volts");
        }
        List<BusTable> tables = targets.bus(circuit, name).stream()
                .map(segment -> BusQuestion.ask(circuit, segment))
                .toList();
        return switch (format) {
            case TEXT -> tables.stream().map(BusTableText::of).collect(Collectors.joining("\n"));
            case LINE -> tables.stream().map(BusTableText::line).collect(Collectors.joining());
            case JSON -> ProbeJson.of(tables);
        };
    }
}
