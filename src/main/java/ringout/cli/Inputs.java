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
import ringout.present.text.QuestionsText;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.intake.Answers;
import ringout.text.Nearest;
import ringout.text.Problem;

/** Reads what a command is called with, and tells all that is wrong with it. */
final class Inputs {
    private final CommandLine line;
    private final Answers answers;

    Inputs(CommandLine line) {
        this(line, Answers.NONE);
    }

    /** The same, with answers to what was asked about a list. */
    Inputs(CommandLine line, Answers answers) {
        this.line = line;
        this.answers = answers;
    }

    /** The aircraft, or nothing when it cannot be read as meant (the problems are told). */
    Optional<Aircraft> aircraft(Path path) {
        return read(path).map(ReadResult::aircraft);
    }

    /** The same with what the reader knows besides. */
    Optional<ReadResult> read(Path path) {
        ReadResult result = AircraftReader.read(path, answers);
        PrintWriter err = line.getErr();
        if (result.ok()) {
            if (!result.questions().isEmpty() || !result.assumptions().isEmpty()) {
                err.println("ringout: " + path + ": "
                        + QuestionsText.summary(result.questions(), result.assumptions()) + "; ringout ask " + path
                        + " lists them");
            }
            return Optional.of(result);
        }
        if (!result.sheets().isEmpty()) {
            err.println("ringout: " + path + " is no aircraft yet; nothing was checked or written");
            err.print(QuestionsText.of(result.questions(), result.assumptions()));
            err.println("to answer: ringout ask " + path + " --format csv > questions.csv, fill in the last column,"
                    + " and give it back with --answers questions.csv");
            return Optional.empty();
        }
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
