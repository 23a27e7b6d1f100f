package ringout.present.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import ringout.model.Aircraft;
import ringout.present.json.AircraftJson;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.MemoryFolder;
import ringout.samples.RandomAircraft;
import ringout.text.Problem;

/** What is written is read back as the same aircraft, byte for byte, as JSON and as tables, whatever the names are. */
class RoundTripTest {
    private static Aircraft read(MemoryFolder folder) {
        ReadResult result = AircraftReader.read(folder);
        assertEquals(List.of(), result.problems().stream().map(Problem::words).toList());
        return result.aircraft();
    }

    private static MemoryFolder folder(Map<String, String> files) {
        MemoryFolder folder = MemoryFolder.named("x");
        for (Map.Entry<String, String> file : files.entrySet()) {
            folder = folder.with(file.getKey(), file.getValue().getBytes(StandardCharsets.UTF_8));
        }
        return folder;
    }

    @Property(tries = 300)
    void jsonLosesNothing(@ForAll long seed) {
        String json = AircraftJson.of(RandomAircraft.of(seed, 5));
        assertEquals(json, AircraftJson.of(read(MemoryFolder.named("x").with("aircraft.json", json))));
    }

    @Property(tries = 300)
    void tablesLoseNothing(@ForAll long seed) {
        Aircraft aircraft = RandomAircraft.of(seed, 5);
        Map<String, String> tables = AircraftTables.of(aircraft);
        Aircraft again = read(folder(tables));
        assertEquals(AircraftJson.of(aircraft), AircraftJson.of(again), () -> String.join("\n", tables.values()));
        assertEquals(tables, AircraftTables.of(again));
    }
}
