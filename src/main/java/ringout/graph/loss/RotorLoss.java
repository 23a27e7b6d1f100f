package ringout.graph.loss;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.model.UnitKind;

/** Which motors stop when one thing lets go: supply and return of their controller, its command, its phases. */
public final class RotorLoss {
    private final Circuit circuit;
    private final Wiring wiring;
    private final SupplyLoss supply;
    private final SignalLoss signals;
    private final Buses buses;
    private final List<Driven> driven = new ArrayList<>();
    private final Map<Integer, Set<Integer>> byItem = new TreeMap<>();

    /**
     * A motor that turns.
     *
     * @param drive the motor and what drives it
     * @param items items that stop it alone, ascending
     * @param bus number of the bus segment it is commanded over, or -1
     */
    public record Driven(MotorDrive drive, Set<Integer> items, int bus) {}

    private RotorLoss(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.supply = SupplyLoss.of(circuit);
        this.signals = SignalLoss.of(circuit);
        this.buses = Buses.of(circuit);
        for (MotorDrive drive : MotorDrives.of(circuit)) {
            find(drive).ifPresent(driven::add);
        }
        for (int i = 0; i < driven.size(); i++) {
            for (int item : driven.get(i).items()) {
                byItem.computeIfAbsent(item, key -> new TreeSet<>()).add(i);
            }
        }
    }

    /** The losses of a circuit, found once. */
    public static RotorLoss of(Circuit circuit) {
        return circuit.know(RotorLoss.class, RotorLoss::new);
    }

    /** The motors that turn at all, in the order of the units. */
    public List<Driven> driven() {
        return Collections.unmodifiableList(driven);
    }

    /** Items by number, each with the places in {@link #driven} of the motors it stops. */
    public Map<Integer, Set<Integer>> byItem() {
        return Collections.unmodifiableMap(byItem);
    }

    private Optional<Driven> find(MotorDrive drive) {
        int motor = wiring.directory().find(drive.motor().ref()).orElse(-1);
        int controller = drive.controller().orElse(motor);
        Optional<Set<Integer>> power = both(supply.of(controller), supply.of(motor));
        Optional<Driven> command = pulse(drive).or(() -> overBus(drive, controller));
        if (power.isEmpty() || command.isEmpty()) {
            return Optional.empty();
        }
        Set<Integer> items = new TreeSet<>(power.get());
        items.addAll(command.get().items());
        Items numbers = Items.of(circuit);
        for (Wire wire : drive.phaseWires()) {
            items.add(numbers.lead(wire.leadIndex()));
            items.add(numbers.plugOf(wire.fromPin()));
            items.add(numbers.plugOf(wire.toPin()));
        }
        items.add(numbers.unit(controller));
        items.add(numbers.unit(motor));
        return Optional.of(new Driven(drive, items, command.get().bus()));
    }

    private static Optional<Set<Integer>> both(Optional<Set<Integer>> a, Optional<Set<Integer>> b) {
        return a.flatMap(first -> b.map(second -> {
            Set<Integer> all = new TreeSet<>(first);
            all.addAll(second);
            return all;
        }));
    }

    /** Commanded by an output: what cuts all outputs that drive it. */
    private Optional<Driven> pulse(MotorDrive drive) {
        Optional<Set<Integer>> common = Optional.empty();
        for (int output : drive.drivers()) {
            Set<Integer> net = signals.onNet(output, drive.pulsePin().orElse(output));
            Optional<Set<Integer>> way = both(Optional.of(net), supply.of(wiring.unitOf(output)));
            common = shared(common, way);
        }
        return common.map(items -> new Driven(drive, items, -1));
    }

    private static Optional<Set<Integer>> shared(Optional<Set<Integer>> a, Optional<Set<Integer>> b) {
        if (a.isEmpty() || b.isEmpty()) {
            return a.or(() -> b);
        }
        Set<Integer> common = new TreeSet<>(a.get());
        common.retainAll(b.get());
        return Optional.of(common);
    }

    /** Commanded over a bus by a flight controller on it. */
    private Optional<Driven> overBus(MotorDrive drive, int controller) {
        Optional<Set<Integer>> common = Optional.empty();
        int bus = -1;
        for (BusHub hub : buses.hubs()) {
            if (hub.unit() == controller && hub.member()) {
                BusSegment segment = buses.segment(hub);
                for (BusHub chief : buses.nodes(segment)) {
                    if (wiring.directory().type(chief.unit()).kind().is(UnitKind.CONTROLLER)) {
                        common = shared(common, both(Optional.of(signals.onBus(chief, hub)), supply.of(chief.unit())));
                        bus = bus < 0 || bus == segment.index() ? segment.index() : Integer.MAX_VALUE;
                    }
                }
            }
        }
        int only = bus == Integer.MAX_VALUE ? -1 : bus;
        return common.map(items -> new Driven(drive, items, only));
    }
}
