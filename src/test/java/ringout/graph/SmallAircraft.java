package ringout.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import ringout.model.Aircraft;
import ringout.model.End;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.MemoryFolder;
import ringout.text.Problem;

/** Aircraft of a few units for tests of the graph, and the words to point at their pins. */
public final class SmallAircraft {
    /** Packs, boards, regulators and consumers of round numbers. */
    public static final String TYPES = """
            {"types": [
              {"name": "PACK", "kind": "pack",
               "plugs": [{"name": "N", "pins": [{"number": "1", "role": "pack minus"}]},
                         {"name": "P", "pins": [{"number": "1", "role": "pack plus"}]}],
               "parts": [{"name": "cells", "kind": "source", "from": "-", "to": "+",
                 "rating": {"cells": 6, "cellMilliohm": 1.5, "fullV": 4.2, "nominalV": 3.7, "emptyV": 3.3}}]},
              {"name": "BOARD", "kind": "board",
               "plugs": [{"name": "BP", "pins": [{"number": "1", "role": "supply through", "inside": "bat"}]},
                         {"name": "BN", "pins": [{"number": "1", "role": "0V"}]},
                         {"name": "T1", "pins": [{"number": "1", "role": "supply through", "inside": "bat"}, {"number": "2", "role": "0V"}]},
                         {"name": "T2", "pins": [{"number": "1", "role": "supply through", "inside": "bat"}, {"number": "2", "role": "0V"}]}]},
              {"name": "REG5", "kind": "regulator",
               "plugs": [{"name": "IN", "pins": [{"number": "1", "role": "supply in", "inside": "bat"}, {"number": "2", "role": "0V"}]},
                         {"name": "OUT", "pins": [{"number": "1", "role": "supply out", "inside": "5"}, {"number": "2", "role": "0V"}]}],
               "rails": [{"name": "bat", "minV": 10, "maxV": 60}, {"name": "5", "nominalV": 5, "minV": 4.9, "maxV": 5.1}],
               "parts": [{"name": "buck", "kind": "regulator", "from": "bat", "to": "5", "rating": {"outputV": 5, "efficiency": 0.5}}]},
              {"name": "BOX", "kind": "unit",
               "plugs": [{"name": "S", "pins": [{"number": "1", "role": "supply in", "inside": "5"}, {"number": "2", "role": "0V"}]},
                         {"name": "X", "pins": [{"number": "1", "role": "supply out", "inside": "5 ports"}, {"number": "2", "role": "0V"}]}],
               "rails": [{"name": "5", "minV": 4.5, "maxV": 5.5}, {"name": "5 ports", "nominalV": 5}],
               "parts": [{"name": "feed", "kind": "link", "from": "5", "to": "5 ports", "rating": {"milliohm": 20}}],
               "loads": [{"rail": "5", "averageA": 2, "peakA": 3}]},
              {"name": "MOTOR", "kind": "speed controller",
               "plugs": [{"name": "P", "pins": [{"number": "1", "role": "supply in", "inside": "bat"}]},
                         {"name": "N", "pins": [{"number": "1", "role": "0V"}]},
                         {"name": "S", "pins": [{"number": "1", "role": "pulse in"}, {"number": "2", "role": "0V"}]}],
               "rails": [{"name": "bat", "minV": 14, "maxV": 60}],
               "loads": [{"rail": "bat", "averageW": 222, "peakA": 28}]}]}
            """;

    private SmallAircraft() {}

    /** Reads an aircraft of the types above; problems fail the test. */
    public static Aircraft read(String json) {
        MemoryFolder folder = MemoryFolder.named("small")
                .with("aircraft.json", json.replaceFirst("\\{", "{\"library\": [\"types.json\"], "))
                .with("types.json", TYPES);
        return sound(AircraftReader.read(folder));
    }

    /** Reads a sample as its user does. */
    public static Aircraft sample(String name) {
        return sound(AircraftReader.read(Path.of("samples", name)));
    }

    private static Aircraft sound(ReadResult result) {
        assertEquals(List.of(), result.problems().stream().map(Problem::words).toList());
        return result.aircraft();
    }

    /** The circuit of the first state. */
    public static Circuit circuit(Aircraft aircraft) {
        return Circuit.all(Wiring.of(aircraft)).get(0);
    }

    /** The vertex of UNIT-PLUG-PIN, or of UNIT-PLUG with one pin. */
    public static int pin(Circuit circuit, String name) {
        Wiring wiring = circuit.wiring();
        Site site = wiring.directory().resolve(new End(name));
        if (site instanceof Site.OnPin on) {
            return wiring.pinVertex(on.unit(), on.pin());
        }
        if (site instanceof Site.OnPlug on) {
            assertEquals(1, wiring.endPin(on.unit(), on.plug()) - wiring.firstPin(on.unit(), on.plug()), name);
            return wiring.firstPin(on.unit(), on.plug());
        }
        throw new AssertionError(name + ": " + site);
    }

    /** A point inside a unit. */
    public static int point(Circuit circuit, String unit, String name) {
        int number = circuit.wiring().directory().find(unit).orElseThrow();
        return circuit.wiring().pointVertex(number, name).orElseThrow();
    }
}
