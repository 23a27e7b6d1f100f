package ringout.plan.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.model.UnitKind;
import ringout.model.UnitType;

/** What must be so before units get power, and what ends a stage at once. Common practice, no source. */
final class Stops {
    private Stops() {}

    /** {@return when to switch off, besides a current} */
    static List<String> of(Circuit circuit, List<String> fresh) {
        List<String> stop = new ArrayList<>();
        stop.add("a voltage outside its band");
        List<String> movers = fresh.stream()
                .filter(unit -> moves(type(circuit, unit).kind().or(UnitKind.UNIT)))
                .toList();
        if (!movers.isEmpty()) {
            stop.add("moves or oscillates uncommanded: " + String.join(", ", movers));
        }
        stop.add("smell, smoke, anything warm");
        return stop;
    }

    private static boolean moves(UnitKind kind) {
        return kind == UnitKind.ACTUATOR
                || kind == UnitKind.GEAR
                || kind == UnitKind.PAYLOAD
                || kind == UnitKind.PUMP
                || kind == UnitKind.EJECTOR
                || kind == UnitKind.SPEED_CONTROLLER;
    }

    /** {@return what types ask for before their units are powered, each once with the units it is asked for} */
    static List<String> before(Circuit circuit, List<String> fresh) {
        Map<String, List<String>> asked = new LinkedHashMap<>();
        for (String unit : fresh) {
            UnitType type = type(circuit, unit);
            type.prerequisites()
                    .forEach(one -> asked.computeIfAbsent(one.what(), key -> new ArrayList<>())
                            .add(unit));
            if (type.prerequisites().isEmpty() && type.antenna().is(true)) {
                asked.computeIfAbsent("antenna or dummy load fitted", key -> new ArrayList<>())
                        .add(unit);
            }
            if (type.ejector().is(true)) {
                asked.computeIfAbsent("safe pin in, line of fire clear", key -> new ArrayList<>())
                        .add(unit);
            }
        }
        return asked.entrySet().stream()
                .map(one -> one.getKey() + ": " + String.join(", ", one.getValue()))
                .toList();
    }

    private static UnitType type(Circuit circuit, String unit) {
        return circuit.wiring()
                .directory()
                .type(circuit.wiring().directory().find(unit).orElse(0));
    }
}
