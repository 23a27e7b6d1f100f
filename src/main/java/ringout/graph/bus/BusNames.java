package ringout.graph.bus;

import java.util.HashMap;
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
    private final Map<String, String> listed = new HashMap<>();

    private BusNames(Circuit circuit) {
        this.circuit = circuit;
        for (Bus bus : circuit.wiring().aircraft().buses()) {
            bus.members().forEach(member -> listed.put(fold(member), bus.name()));
        }
    }

    static BusNames of(Circuit circuit) {
        return circuit.know(BusNames.class, BusNames::new);
    }

    Optional<String> declared(BusHub hub) {
        if (!hub.member() || circuit.wiring().directory().isJoint(hub.unit())) {
            return Optional.empty();
        }
        Unit unit = circuit.wiring().directory().unit(hub.unit());
        String port =
                hub.port().contains(" @") ? hub.port().substring(0, hub.port().indexOf(" @")) : hub.port();
        Optional<String> set =
                PortSettings.of(unit, port).flatMap(setting -> setting.bus().known());
        return set.or(() -> Optional.ofNullable(listed.get(fold(unit.ref() + ":" + port))))
                .or(() -> Optional.ofNullable(listed.get(fold(unit.ref()))));
    }

    private static String fold(String name) {
        return name.toUpperCase(Locale.ROOT);
    }
}
