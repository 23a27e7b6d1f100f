package ringout.present.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import ringout.present.json.AircraftJson;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;
import ringout.samples.RandomAircraft;

/** The schemas beside the program say what the program says. Oracle: an independent validator of JSON Schema. */
class AircraftSchemaTest {
    private static final Path FOLDER = Path.of("schemas");
    private static final SchemaRegistry REGISTRY =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
    private static final Schema AIRCRAFT = REGISTRY.getSchema(AircraftSchema.aircraft());
    private static final Schema LIBRARY = REGISTRY.getSchema(AircraftSchema.library());

    private static List<String> errors(Schema schema, String json) {
        return schema.validate(json, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    private static String file(String name) throws IOException {
        return Files.readString(FOLDER.resolve(name), StandardCharsets.UTF_8);
    }

    @Test
    void theFilesAreWhatTheModelSays() throws IOException {
        assertEquals(AircraftSchema.aircraft(), file("aircraft.schema.json"), "write them anew with WriteSchemas");
        assertEquals(AircraftSchema.library(), file("types.schema.json"), "write them anew with WriteSchemas");
        assertEquals(AircraftSchema.taken(), file("taken.schema.json"), "write them anew with WriteSchemas");
    }

    @Test
    void theyAreSchemas() throws IOException {
        Schema meta = REGISTRY.getSchema(
                com.networknt.schema.SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), errors(meta, AircraftSchema.aircraft()));
        assertEquals(List.of(), errors(meta, AircraftSchema.library()));
        assertEquals(List.of(), errors(meta, AircraftSchema.taken()));
    }

    @Test
    void everyFieldSaysWhatItMeans() {
        assertFalse(AircraftSchema.aircraft().contains("\"description\": \"\""));
        assertTrue(AircraftSchema.aircraft().contains("\"description\": \"cut length, in mm\""));
    }

    @Test
    void everySampleIsValid() throws IOException {
        int seen = 0;
        try (Stream<Path> files = Files.walk(Path.of("samples"))) {
            for (Path path :
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                Schema schema = path.endsWith("aircraft.json") ? AIRCRAFT : LIBRARY;
                assertEquals(List.of(), errors(schema, Files.readString(path)), path.toString());
                seen++;
            }
        }
        assertFalse(seen < 5, "only " + seen + " samples");
    }

    @Property(tries = 60)
    void whateverIsWrittenIsValid(@ForAll long seed) {
        assertEquals(List.of(), errors(AIRCRAFT, AircraftJson.of(RandomAircraft.of(seed, 3))));
    }

    @Test
    void valuesInEveryFormThatTheReaderTakes() {
        for (String value : List.of(
                "620",
                "62.5",
                "\"62,5\"",
                "\"62 cm\"",
                "\"0.62 M\"",
                "\"?\"",
                "\"n/a\"",
                "null",
                "\"\"",
                "{\"value\": \"62 cm\", \"origin\": \"measured\", \"date\": \"2026-03-01\"}")) {
            agrees(true, "{\"id\": \"W1\", \"from\": \"A-1\", \"to\": \"B-1\", \"lengthMm\": " + value + "}");
        }
        for (String fields : List.of(
                "\"kind\": \"CAN\"",
                "\"kind\": \"power_5 v\"",
                "\"twisted\": \"x\"",
                "\"twisted\": true",
                "\"awg\": \"4/0\"",
                "\"awg\": \"AWG 26\"",
                "\"awg\": 26",
                "\"pins\": \"1>1 2 -> 3\"",
                "\"note\": 12",
                "\"matings\": \"0x10\"")) {
            agrees(true, "{\"id\": \"W1\", \"from\": \"A-1\", \"to\": 7, " + fields + "}");
        }
    }

    @Test
    void whatTheReaderRefusesIsNotValid() {
        for (String fields : List.of(
                "\"lengthMm\": \"long\"",
                "\"lengthMm\": \"62 kg\"",
                "\"lengthMm\": true",
                "\"lengthMm\": [1]",
                "\"length\": 3",
                "\"kind\": \"cann\"",
                "\"twisted\": \"maybe\"",
                "\"awg\": \"thin\"",
                "\"pins\": \"12\"",
                "\"note\": {\"text\": 1}",
                "\"lengthMm\": {\"value\": 3, \"origin\": \"hearsay\"}",
                "\"lengthMm\": {\"value\": 3, \"date\": \"soon\"}",
                "\"route\": {}",
                "\"conductors\": [1]",
                "\"beside\": [{}]")) {
            agrees(false, "{\"id\": \"W1\", \"from\": \"A-1\", \"to\": \"B-1\", " + fields + "}");
        }
    }

    private static void agrees(boolean valid, String lead) {
        String json = "{\"leads\": [" + lead + "]}";
        boolean read = AircraftReader.read(MemoryFolder.named("x").with("aircraft.json", json))
                .ok();
        assertEquals(valid, read, "reader: " + lead);
        assertEquals(valid, errors(AIRCRAFT, json).isEmpty(), "schema: " + lead);
    }
}
