package ringout.graph.bus;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.PortSettings;
import ringout.model.Bus;
import ringout.model.Unit;

/** Which bus a port is declared on: by its own setting, or by a bus that lists the unit or UNIT:PORT. */
final class BusNames {
    private final Circuit circuit;
    private final Map<String, List<String>> listed = new HashMap<>();

    private BusNames(Circuit circuit) {
        this.circuit = circuit;
        for (Bus bus : circuit.wiring().aircraft().buses()) {
            bus.members()
                    .forEach(member -> listed.computeIfAbsent(fold(member), key -> new ArrayList<>())
                            .add(bus.name()));
        }
    }

    static BusNames of(Circuit circuit) {
        return circuit.know(BusNames.class, BusNames::new);
    }

    Optional<String> declared(int unit, String port) {
        if (circuit.wiring().directory().isJoint(unit)) {
            return Optional.empty();
        }
        Unit record = circuit.wiring().directory().unit(unit);
        Optional<String> set = PortSettings.of(record, port)
                .flatMap(setting -> setting.bus().known())
                .filter(bus -> !bus.isEmpty());
        if (set.isPresent() || listed.isEmpty()) {
            return set;
        }
        List<String> byPort = listed.getOrDefault(fold(record.ref() + ":" + port), List.of());
        return byPort.isEmpty() ? byUnit(record, port) : Optional.of(byPort.get(0));
    }

    /** A unit listed without a port is on the bus named as the port, or on the only bus that lists it. */
    private Optional<String> byUnit(Unit unit, String port) {
        List<String> buses = listed.getOrDefault(fold(unit.ref()), List.of());
        Optional<String> named =
                buses.stream().filter(bus -> fold(bus).equals(fold(port))).findFirst();
        return named.isPresent() || buses.size() != 1 ? named : Optional.of(buses.get(0));
    }

    private static String fold(String name) {
        return name.toUpperCase(Locale.ROOT);
    }
}
