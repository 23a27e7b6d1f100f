package ringout.graph;

import java.util.Optional;
import ringout.model.PortSetting;
import ringout.model.Unit;

/** Finds the setting of a port of a unit. */
public final class PortSettings {
    private PortSettings() {}

    /** The setting of a port by name; a setting without a port name belongs to the only one there is. */
    public static Optional<PortSetting> of(Unit unit, String port) {
        Optional<PortSetting> named = unit.ports().stream()
                .filter(setting -> setting.port().equalsIgnoreCase(port))
                .findFirst();
        return named.or(() -> unit.ports().stream()
                .filter(setting -> setting.port().isEmpty())
                .findFirst());
    }
}
