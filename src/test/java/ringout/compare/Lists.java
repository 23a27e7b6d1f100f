package ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import ringout.compare.difference.Difference;
import ringout.compare.find.Differences;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.edit.Edited;
import ringout.model.edit.Edits;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.edit.EditReader;
import ringout.text.Problem;

/** Aircraft to compare, and how they are changed. */
final class Lists {
    private Lists() {}

    static Aircraft sample(String name) {
        ReadResult result = AircraftReader.read(Path.of("samples", name));
        assertEquals(List.of(), result.problems().stream().map(Problem::words).toList());
        return result.aircraft();
    }

    static Aircraft edited(Aircraft aircraft, String... lines) {
        EditReader.Result read = EditReader.read("test.edit", String.join("\n", lines));
        assertEquals(List.of(), read.problems().stream().map(Problem::words).toList());
        Edited edited = Edits.apply(aircraft, read.edits());
        assertEquals(List.of(), edited.problems().stream().map(Problem::words).toList());
        return edited.aircraft();
    }

    static Circuit circuit(Aircraft aircraft) {
        return Circuit.all(Wiring.of(aircraft)).get(0);
    }

    static List<Difference> differences(Aircraft base, Aircraft other) {
        return Differences.of(circuit(base), circuit(other)).all();
    }

    /** Each difference in a line: kind, what, change. */
    static List<String> lines(Aircraft base, Aircraft other) {
        return differences(base, other).stream()
                .map(one -> one.kind() + " " + one.what() + ": " + one.change()
                        + (one.effects().isEmpty() ? "" : " " + one.effects()))
                .toList();
    }
}
