package ringout.draw.harness;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.draw.harness.MapPicture.Column;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.PulseLinks;
import ringout.model.PinRole;
import ringout.model.PortSetting;
import ringout.model.UnitKind;

/** What drives a motor, in the words of its table: output, slot of the board, clamps, bus and address. */
final class DriveWords {
    /** Head of the column that says which way a motor turns as it is wired and set. */
    static final String TURNS = "turns\nas wired";

    /** Heads of the table in the order of its columns. */
    static final List<String> ORDER = List.of("output", "slot", "clamp", "bus", TURNS, "prop");

    private static final String BUS = "bus ";

    private static final Set<PinRole> SUPPLY = Set.of(PinRole.SUPPLY_IN, PinRole.SUPPLY_THROUGH, PinRole.ZERO_V);

    private final Circuit circuit;
    private final Wiring wiring;

    DriveWords(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
    }

    /** The cells of a motor, those that there are. */
    List<Column> drivenBy(MotorDrive drive) {
        List<Column> cells = new ArrayList<>();
        for (int output : drive.drivers()) {
            String unit = wiring.directory().name(wiring.unitOf(output));
            cells.add(new Column("output", unit, PulseLinks.name(wiring, output)));
        }
        int controller = drive.controller()
                .orElseGet(() -> wiring.directory().find(drive.motor().ref()).orElse(-1));
        drive.pulsePin().flatMap(this::slot).ifPresent(cells::add);
        if (controller >= 0) {
            clamps(controller).ifPresent(cells::add);
            buses(controller).forEach(cells::add);
        }
        return cells;
    }

    /** The plug on the board that the pulse comes from, unless it comes straight from a controller. */
    private Optional<Column> slot(int pulsePin) {
        for (int w : wiring.wiresAt(pulsePin)) {
            Wire wire = wiring.wires().get(w);
            int far = wire.otherPin(pulsePin);
            int unit = wiring.unitOf(far);
            boolean straight = wiring.is(far, PinRole.PULSE_OUT);
            if (circuit.mated(wire) && !straight && !wiring.directory().isJoint(unit)) {
                return Optional.of(new Column("slot", wiring.directory().name(unit), plug(far)));
            }
        }
        return Optional.empty();
    }

    /** The plugs that a speed controller is fed from and returns to. */
    private Optional<Column> clamps(int controller) {
        Set<String> units = new LinkedHashSet<>();
        List<String> plugs = new ArrayList<>();
        for (int pin = wiring.firstPin(controller); pin < wiring.endPin(controller); pin++) {
            boolean supply = wiring.role(pin).filter(SUPPLY::contains).isPresent();
            boolean signal = wiring.plug(pin).pins().size() > 2;
            for (int w : supply && !signal ? wiring.wiresAt(pin) : new int[0]) {
                Wire wire = wiring.wires().get(w);
                int far = wire.otherPin(pin);
                boolean power =
                        wiring.is(pin, PinRole.ZERO_V) ? wiring.plug(far).pins().size() == 1 : true;
                if (circuit.mated(wire) && power) {
                    units.add(wiring.directory().name(wiring.unitOf(far)));
                    plugs.add(plug(far));
                }
            }
        }
        if (plugs.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Column("clamp", String.join("/", units), stem(plugs)));
    }

    private String plug(int pin) {
        return wiring.directory().isJoint(wiring.unitOf(pin))
                ? ""
                : wiring.plug(pin).name();
    }

    /** Plugs that differ in their last letter only are said once: {@code K1} for {@code K1P} and {@code K1N}. */
    private static String stem(List<String> plugs) {
        Set<String> distinct = new LinkedHashSet<>(plugs);
        Set<String> stems = new LinkedHashSet<>();
        distinct.forEach(plug -> stems.add(plug.substring(0, Math.max(0, plug.length() - 1))));
        String first = stems.iterator().next();
        return distinct.size() > 1 && stems.size() == 1 && first.length() > 1 ? first : String.join(" ", distinct);
    }

    /** The buses that a controller hangs on together with a flight controller, each with its address there. */
    private List<Column> buses(int controller) {
        List<Column> found = new ArrayList<>();
        Buses buses = Buses.of(circuit);
        for (BusHub hub : buses.hubs()) {
            boolean flown = hub.unit() == controller
                    && hub.member()
                    && buses.nodes(buses.segment(hub)).stream()
                            .anyMatch(node ->
                                    wiring.directory().type(node.unit()).kind().is(UnitKind.CONTROLLER));
            if (flown) {
                String address = buses.setting(hub)
                        .map(PortSetting::address)
                        .flatMap(datum -> datum.known())
                        .map(number -> " " + number)
                        .orElse("");
                String name = buses.name(buses.segment(hub));
                found.add(Column.of("bus", (name.startsWith(BUS) ? name.substring(BUS.length()) : name) + address));
            }
        }
        return found;
    }
}
