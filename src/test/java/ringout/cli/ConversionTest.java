package ringout.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.present.json.AircraftJson;
import ringout.read.AircraftReader;
import ringout.text.Problem;

/** Tables to JSON and back on disk. */
class ConversionTest {
    private static final Conversion.Options PLAIN = new Conversion.Options(false, false);
    private static final Conversion.Options OVERWRITE = new Conversion.Options(true, false);

    @TempDir
    private Path dir;

    private static void written(Conversion.Outcome outcome) {
        assertInstanceOf(Conversion.Outcome.Written.class, outcome, outcome::toString);
    }

    private static List<String> refused(Conversion.Outcome outcome) {
        return assertInstanceOf(Conversion.Outcome.Refused.class, outcome).problems().stream()
                .map(Problem::words)
                .toList();
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "linewarden-review", "dewmaker", "starter"})
    void samplesComeBackByteForByte(String sample) throws IOException {
        Path from = Path.of("samples", sample);
        Path json = dir.resolve("one/a.json");
        written(Conversion.convert(from, json, PLAIN));
        written(Conversion.convert(json, dir.resolve("two/tables"), PLAIN));
        written(Conversion.convert(dir.resolve("two/tables"), dir.resolve("one/b.json"), PLAIN));
        assertEquals(Files.readString(json), Files.readString(dir.resolve("one/b.json")));
        assertEquals(
                AircraftJson.of(AircraftReader.read(from).aircraft()).replaceAll("(?m)^  \"library\".*$", ""),
                AircraftJson.of(AircraftReader.read(json).aircraft()).replaceAll("(?m)^  \"library\".*$", ""));
        assertTrue(AircraftReader.read(dir.resolve("two/tables")).ok());
    }

    @Test
    void aSelfContainedFileNeedsNoLibrary() throws IOException {
        Path json = dir.resolve("all.json");
        written(Conversion.convert(Path.of("samples/linewarden"), json, new Conversion.Options(false, true)));
        assertFalse(Files.readString(json).contains("\"library\""));
        assertEquals(
                AircraftReader.read(Path.of("samples/linewarden"))
                        .aircraft()
                        .types()
                        .size(),
                AircraftReader.read(json).aircraft().types().size());
    }

    @Test
    void writesNothingOnProblems() throws IOException {
        Path bad = Files.createDirectory(dir.resolve("bad"));
        Files.writeString(bad.resolve("leads.csv"), "id,from,to,awg\nW1,A-1,B-1,thin\n");
        assertEquals(
                1,
                refused(Conversion.convert(bad, dir.resolve("out.json"), PLAIN)).size());
        assertEquals(List.of("bad"), names(dir));
    }

    @Test
    void overwritesOnlyWhenAskedAndLeavesNoStaleTable() throws IOException {
        Path from = Files.createDirectory(dir.resolve("from"));
        Files.writeString(from.resolve("leads.csv"), "id,from,to\nW1,A-1,B-1\n");
        Path to = Files.createDirectory(dir.resolve("to"));
        Files.writeString(to.resolve("units.csv"), "ref,type\nOLD,T\n");
        Files.writeString(to.resolve("photo.txt"), "mine");
        assertTrue(refused(Conversion.convert(from, to, PLAIN)).get(0).contains("there is something already"));
        assertEquals(List.of("photo.txt", "units.csv"), names(to));
        written(Conversion.convert(from, to, OVERWRITE));
        assertEquals(List.of("aircraft.json", "leads.csv", "photo.txt"), names(to));
        assertTrue(refused(Conversion.convert(from, dir.resolve("from"), PLAIN))
                .get(0)
                .contains("already"));
        Files.createDirectory(dir.resolve("folder.json"));
        assertTrue(refused(Conversion.convert(from, dir.resolve("folder.json"), OVERWRITE))
                .get(0)
                .contains("folder"));
    }
}
