package ringout.solve.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;
import ringout.solve.ProbePoint;

/** Aircraft and points for the tests of the meter. */
final class MeterTests {
    private MeterTests() {}

    static Circuit linewarden(String... pulled) {
        return circuit(SmallAircraft.sample("linewarden"), pulled);
    }

    static Circuit circuit(Aircraft aircraft, String... pulled) {
        Wiring wiring = Wiring.of(aircraft);
        return Circuit.of(wiring, OhmsQuestion.pulled(Circuit.states(wiring).get(0), List.of(pulled)));
    }

    static int at(Circuit circuit, String name) {
        return ProbePoint.find(circuit.wiring(), name).orElseThrow();
    }

    static OhmsAnswer ohms(Circuit circuit, String from, String to) {
        return OhmsQuestion.ask(circuit, at(circuit, from), at(circuit, to), List.of());
    }

    static Reading.Ohms reading(Circuit circuit, String from, String to) {
        return (Reading.Ohms) ohms(circuit, from, to).reading();
    }

    /** Boards of one passive point a pin, and leads between them: row i joins {@code from[i]} and {@code to[i]}. */
    static Aircraft net(int boards, int[][] rows, double[] lengthMm) {
        List<String> units = new ArrayList<>();
        for (int i = 0; i < boards; i++) {
            units.add("{\"ref\": \"J" + i + "\", \"type\": \"JOINT\"}");
        }
        List<String> leads = new ArrayList<>();
        for (int i = 0; i < rows.length; i++) {
            leads.add(String.format(
                    Locale.ROOT,
                    "{\"id\": \"W%d\", \"from\": \"J%d-P-1\", \"to\": \"J%d-P-1\", \"areaMm2\": 0.1, \"lengthMm\": %s}",
                    i,
                    rows[i][0],
                    rows[i][1],
                    lengthMm[i]));
        }
        String type =
                "{\"name\": \"JOINT\", \"plugs\": [{\"name\": \"P\", \"contactMilliohm\": 10, \"pins\": [{\"number\": \"1\","
                        + " \"role\": \"passive\", \"inside\": \"x\"}]}]}";
        String json = "{\"name\": \"net\", \"types\": [" + type + "], \"units\": [" + String.join(",", units)
                + "], \"leads\": [" + String.join(",", leads) + "]}";
        var read = AircraftReader.read(MemoryFolder.named("net").with("aircraft.json", json));
        if (!read.ok()) {
            throw new AssertionError(read.problems().toString());
        }
        return read.aircraft();
    }
}
