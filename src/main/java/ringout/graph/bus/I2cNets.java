package ringout.graph.bus;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.PinRole;

/**
 * The I2C nets of a circuit: ports that share clock and data. Channels of a multiplexer and buses inside a unit are ports of
 * their own, so they are nets of their own.
 */
public final class I2cNets {
    /**
     * A port of a unit on an I2C net.
     *
     * @param unit number of the unit
     * @param port name of the port, its plug when the pins name none
     * @param scl its clock pin
     */
    public record Port(int unit, String port, int scl) {}

    private record Lines(int scl, int sda) {
        @Override
        public boolean equals(Object other) {
            return this == other || (other instanceof Lines that && scl == that.scl && sda == that.sda);
        }

        @Override
        public int hashCode() {
            return 31 * scl + sda;
        }
    }

    private final List<List<Port>> nets = new ArrayList<>();

    private I2cNets(Circuit circuit) {
        Wiring wiring = circuit.wiring();
        Map<Lines, List<Port>> byLines = new LinkedHashMap<>();
        for (int unit = 0; unit < wiring.aircraft().units().size(); unit++) {
            if (circuit.aboard(unit)) {
                ports(circuit, unit, byLines);
            }
        }
        byLines.values().stream().filter(ports -> ports.size() > 1).forEach(nets::add);
    }

    /** The I2C nets of a circuit, found once. */
    public static I2cNets of(Circuit circuit) {
        return circuit.know(I2cNets.class, I2cNets::new);
    }

    private static void ports(Circuit circuit, int unit, Map<Lines, List<Port>> byLines) {
        Wiring wiring = circuit.wiring();
        Map<String, int[]> pins = Map.of();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            boolean clock = wiring.is(pin, PinRole.SCL);
            if (clock || wiring.is(pin, PinRole.SDA)) {
                pins = pins.isEmpty() ? new LinkedHashMap<>() : pins;
                String port = wiring.pin(pin).inside().or(wiring.plug(pin).name());
                int[] lines = pins.computeIfAbsent(port, key -> new int[] {-1, -1});
                lines[clock ? 0 : 1] = lines[clock ? 0 : 1] < 0 ? pin : lines[clock ? 0 : 1];
            }
        }
        pins.forEach((port, lines) -> {
            if (lines[0] >= 0 && lines[1] >= 0) {
                Lines on = new Lines(circuit.nets().of(lines[0]), circuit.nets().of(lines[1]));
                byLines.computeIfAbsent(on, key -> new ArrayList<>()).add(new Port(unit, port, lines[0]));
            }
        });
    }

    /** Nets that join two ports or more, each with its ports in the order of the units. */
    public List<List<Port>> nets() {
        return Collections.unmodifiableList(nets);
    }
}
