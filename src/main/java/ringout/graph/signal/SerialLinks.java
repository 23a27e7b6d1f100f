package ringout.graph.signal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.PortSettings;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.PortSetting;
import ringout.model.SerialPort;
import ringout.model.UnitKind;

/**
 * Which serial plugs are joined, whatever pin meets whatever pin: with a flight controller on one side that side is the port and
 * the other the device.
 */
public final class SerialLinks {
    private static final long SERIAL = NetRoles.bits(PinRole.SERIAL_OUT, PinRole.SERIAL_IN);

    private final Circuit circuit;
    private final Map<List<Integer>, Link> links = new LinkedHashMap<>();

    /**
     * A serial plug.
     *
     * @param unit number of its unit
     * @param plug number of the plug in its type
     * @param pin the serial pin of it that meets the other side
     */
    public record Side(int unit, int plug, int pin) {}

    /**
     * Two serial plugs that meet.
     *
     * @param port the one at the flight controller, else the first in the order of the units
     * @param device the other one
     */
    public record Link(Side port, Side device) {}

    private SerialLinks(Circuit circuit) {
        this.circuit = circuit;
        NetRoles roles = NetRoles.of(circuit);
        roles.each(SERIAL, net -> net(roles.pins(net, SERIAL)));
    }

    /** The serial links of a circuit, found once, in the order of the units. */
    public static List<Link> of(Circuit circuit) {
        return Collections.unmodifiableList(new ArrayList<>(
                circuit.know(SerialLinks.class, SerialLinks::new).links.values()));
    }

    private void net(List<Integer> pins) {
        Side first = side(pins.get(0));
        for (int pin : pins) {
            first = controls(first) || !controls(side(pin)) ? first : side(pin);
        }
        for (int pin : pins) {
            Side other = side(pin);
            if (other.unit() != first.unit() || other.plug() != first.plug()) {
                Link link = new Link(first, other);
                links.putIfAbsent(List.of(first.unit(), first.plug(), other.unit(), other.plug()), link);
            }
        }
    }

    private Side side(int pin) {
        return new Side(circuit.wiring().unitOf(pin), circuit.wiring().plugIndex(pin), pin);
    }

    private boolean controls(Side side) {
        return circuit.wiring().directory().type(side.unit()).kind().is(UnitKind.CONTROLLER);
    }

    /** UNIT-PLUG of a side. */
    public static String name(Wiring wiring, Side side) {
        return wiring.plugName(side.unit(), side.plug());
    }

    /** The port of a side as its type describes it. */
    public static Optional<SerialPort> type(Wiring wiring, Side side) {
        String plug = wiring.plug(side.pin()).name();
        return wiring.directory().type(side.unit()).serials().stream()
                .filter(port -> port.name().equals(plug))
                .findFirst();
    }

    /** How the port of a side is set; only a setting that names the port counts. */
    public static Optional<PortSetting> setting(Wiring wiring, Side side) {
        return PortSettings.of(wiring.unit(side.pin()), wiring.plug(side.pin()).name())
                .filter(setting -> !setting.port().isEmpty());
    }

    /** The protocol a side talks: as set, else the one it needs, else the only one it can. */
    public static Datum<String> protocol(Wiring wiring, Side side) {
        Datum<String> set = setting(wiring, side).map(PortSetting::protocol).orElse(Datum.notAsked());
        Optional<SerialPort> type = type(wiring, side);
        Datum<String> needed = type.map(SerialPort::needs).orElse(Datum.notAsked());
        List<String> can = type.map(SerialPort::protocols).orElse(List.of());
        return set.orElse(needed).orElse(can.size() == 1 ? Datum.of(can.get(0)) : Datum.notAsked());
    }
}
