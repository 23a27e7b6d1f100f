package ringout.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.State;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.text.Nearest;
import ringout.text.Problem;

/** Reads what a command is called with, and tells all that is wrong with it. */
final class Inputs {
    private final CommandLine line;

    Inputs(CommandLine line) {
        this.line = line;
    }

    /** The aircraft, or nothing when it cannot be read as meant (the problems are told). */
    Optional<Aircraft> aircraft(Path path) {
        return read(path).map(ReadResult::aircraft);
    }

    /** The same with what the reader knows besides. */
    Optional<ReadResult> read(Path path) {
        ReadResult result = AircraftReader.read(path);
        if (result.ok()) {
            return Optional.of(result);
        }
        PrintWriter err = line.getErr();
        int count = result.problems().size();
        err.println("ringout: " + path + " cannot be read as meant: " + count + (count == 1 ? " problem" : " problems")
                + "; nothing was checked or written");
        for (Problem problem : result.problems()) {
            err.println("  " + problem.words());
        }
        return Optional.empty();
    }

    /** The circuits of the wanted states, all of them when none is named. */
    List<Circuit> circuits(Aircraft aircraft, List<String> wanted) {
        Wiring wiring = Wiring.of(aircraft);
        if (wanted.isEmpty()) {
            return Circuit.all(wiring);
        }
        List<State> states = Circuit.states(wiring);
        return wanted.stream()
                .map(name -> Circuit.of(wiring, state(states, name)))
                .toList();
    }

    /** The state of a name, or a refusal with the nearest match. */
    State state(List<State> states, String name) {
        List<String> names = states.stream().map(State::name).toList();
        return states.stream()
                .filter(state -> state.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> new CommandLine.ParameterException(
                        line,
                        "no state '" + name + "' ("
                                + Nearest.to(name, names)
                                        .map(near -> "did you mean '" + near + "'?")
                                        .orElse("there is: " + String.join(", ", names))
                                + ")"));
    }
}
