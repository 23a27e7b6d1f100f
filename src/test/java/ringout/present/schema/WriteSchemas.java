package ringout.present.schema;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes the schemas anew after a change of the model: run its main method from the project's folder. */
final class WriteSchemas {
    private WriteSchemas() {}

    public static void main(String[] args) throws IOException {
        Files.writeString(Path.of("schemas/aircraft.schema.json"), AircraftSchema.aircraft(), StandardCharsets.UTF_8);
        Files.writeString(Path.of("schemas/types.schema.json"), AircraftSchema.library(), StandardCharsets.UTF_8);
        Files.writeString(Path.of("schemas/taken.schema.json"), AircraftSchema.taken(), StandardCharsets.UTF_8);
    }
}
