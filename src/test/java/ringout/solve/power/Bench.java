package ringout.solve.power;

import java.util.List;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;

/**
 * Small supplies of round numbers: packs of 12 V and 20 milliohm (12.6 V full, 9 V empty), wires of 580 mm and 1 mm2, which
 * are 10 milliohm, contacts of consumers of 5 milliohm, all others of none.
 */
final class Bench {
    private static final String TYPES = """
            "types": [
              {"name": "PACK12", "kind": "pack",
               "plugs": [{"name": "N", "contactMilliohm": 0, "pins": [{"number": "1", "role": "pack minus"}]},
                         {"name": "P", "contactMilliohm": 0, "pins": [{"number": "1", "role": "pack plus"}]}],
               "parts": [{"name": "cells", "kind": "source", "from": "-", "to": "+",
                 "rating": {"cells": 3, "milliohm": 20, "fullV": 4.2, "nominalV": 4.0, "emptyV": 3.0, "capacityAh": 5}}]},
              {"name": "BOX12", "kind": "unit",
               "plugs": [{"name": "S", "contactMilliohm": 5,
                          "pins": [{"number": "1", "role": "supply in", "inside": "r"}, {"number": "2", "role": "0V"}]}],
               "rails": [{"name": "r", "nominalV": 12, "minV": 9, "maxV": 20}]},
              {"name": "BAR", "kind": "board",
               "plugs": [{"name": "P1", "contactMilliohm": 0, "pins": [{"number": "1", "role": "supply through", "inside": "bar"}]},
                         {"name": "P2", "contactMilliohm": 0, "pins": [{"number": "1", "role": "supply through", "inside": "bar"}]},
                         {"name": "P3", "contactMilliohm": 0, "pins": [{"number": "1", "role": "supply through", "inside": "bar"}]},
                         {"name": "N1", "contactMilliohm": 0, "pins": [{"number": "1", "role": "0V"}]},
                         {"name": "N2", "contactMilliohm": 0, "pins": [{"number": "1", "role": "0V"}]},
                         {"name": "N3", "contactMilliohm": 0, "pins": [{"number": "1", "role": "0V"}]}]},
              {"name": "INLINE", "kind": "board",
               "plugs": [{"name": "A", "contactMilliohm": 0, "pins": [{"number": "1", "role": "supply through", "inside": "in"}]},
                         {"name": "B", "contactMilliohm": 0, "pins": [{"number": "1", "role": "supply through", "inside": "out"}]}],
               "parts": [%s]},
              {"name": "REG5V", "kind": "regulator",
               "plugs": [{"name": "IN", "contactMilliohm": 0, "pins": [{"number": "1", "role": "supply in", "inside": "12"}, {"number": "2", "role": "0V"}]},
                         {"name": "OUT", "contactMilliohm": 0, "pins": [{"number": "1", "role": "supply out", "inside": "5"}, {"number": "2", "role": "0V", "inside": "%s"}]}],
               "rails": [{"name": "12", "minV": 7, "maxV": 30}, {"name": "5", "nominalV": 5, "minV": 4.9, "maxV": 5.1, "zero": "%2$s"}],
               "parts": [{"name": "buck", "kind": "%s", "from": "12", "to": "5", "zero": "%2$s",
                          "rating": {"outputV": 5, "efficiency": 0.5, "quiescentA": 0.1}}]}]
            """;

    private Bench() {}

    /** Reads a supply; the part of an INLINE unit is given, a regulator has a common 0V. */
    static Circuit read(String inline, String json) {
        return read(inline, "0V", "regulator", json);
    }

    static Circuit read(String inline, String zero, String kind, String json) {
        String types = TYPES.formatted(inline, zero, kind);
        return SmallAircraft.circuit(SmallAircraft.read(json.replaceFirst("\\{", "{" + types.strip() + ",")));
    }

    /** A pack, two wires, a consumer: 50 milliohm in all. */
    static Circuit loop(String load, String more) {
        return read("", """
                {"units": [{"ref": "A", "type": "PACK12"}, {"ref": "L", "type": "BOX12", "loads": [%s]}],
                 "leads": [%s, %s]%s}
                """.formatted(load, lead("W1", "A-P", "L-S-1"), lead("W2", "L-S-2", "A-N"), more));
    }

    static String lead(String id, String from, String to) {
        return "{\"id\": \"%s\", \"from\": \"%s\", \"to\": \"%s\", \"areaMm2\": 1, \"lengthMm\": 580}"
                .formatted(id, from, to);
    }

    static String leads(String... ends) {
        StringBuilder all = new StringBuilder();
        for (int i = 0; i + 1 < ends.length; i += 2) {
            all.append(i == 0 ? "" : ", ").append(lead("W" + (i / 2 + 1), ends[i], ends[i + 1]));
        }
        return all.toString();
    }

    static String amps(double amps) {
        return "{\"rail\": \"r\", \"averageA\": " + amps + "}";
    }

    static List<String> missing(OperatingPoint point) {
        return point.assumed().stream()
                .map(a -> a.gap().datum() + " of " + a.gap().of() + ": " + a.value())
                .toList();
    }
}
