package ringout.read.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.present.csv.AircraftTables;
import ringout.present.json.AircraftJson;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.MemoryFolder;
import ringout.text.Problem;

/** Lists in the habits of five people. What they mean, or all that is wrong with them, stands beside each, by hand. */
class MessyTablesTest {
    private static final Path FOLDER = Path.of("src/test/resources/tables");

    /** The tables of a folder, without the expectation beside them. */
    private static ReadResult read(String habit) throws IOException {
        MemoryFolder tables = MemoryFolder.named(habit);
        try (var files = Files.list(FOLDER.resolve(habit))) {
            for (Path file :
                    files.filter(f -> Table.isTableFile(f.toString())).sorted().toList()) {
                tables = tables.with(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return AircraftReader.read(tables);
    }

    private static String lines(ReadResult result) {
        StringBuilder text = new StringBuilder();
        result.problems().stream()
                .map(Problem::words)
                .forEach(line -> text.append(line).append('\n'));
        return text.toString();
    }

    private static String expected(String habit, String name) throws IOException {
        return Files.readString(FOLDER.resolve(habit).resolve(name), StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(strings = {"semicolon-comma", "ditto-ranges", "split-ends", "windows-old"})
    void aListInItsOwnHabitGivesTheAircraft(String habit) throws IOException {
        ReadResult result = read(habit);
        assertEquals("", lines(result));
        assertEquals(expected(habit, "expected.json"), AircraftJson.of(result.aircraft()));
        MemoryFolder again = MemoryFolder.named(habit);
        for (var file : AircraftTables.of(result.aircraft()).entrySet()) {
            again = again.with(file.getKey(), file.getValue());
        }
        assertEquals(
                expected(habit, "expected.json"),
                AircraftJson.of(AircraftReader.read(again).aircraft()));
    }

    @Test
    void allThatIsWrongIsToldAtOnce() throws IOException {
        assertEquals(expected("nothing-right", "problems.txt"), lines(read("nothing-right")));
    }
}
