package ringout.seeded;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import ringout.model.Aircraft;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.text.Problem;

/** The samples as a user reads them. */
final class Samples {
    private Samples() {}

    static Aircraft read(String name) {
        ReadResult result = AircraftReader.read(Path.of("samples", name));
        assertEquals(List.of(), result.problems().stream().map(Problem::words).toList(), "problems of samples/" + name);
        return result.aircraft();
    }
}
