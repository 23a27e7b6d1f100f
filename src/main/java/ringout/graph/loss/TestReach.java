package ringout.graph.loss;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.TerminatorAt;
import ringout.model.AircraftFunction;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.PinRole;
import ringout.model.PlannedTest;
import ringout.model.UnitKind;

/**
 * Which conductors each planned reading depends on: those that, opened alone, change it. Volts depend on the supply of one
 * point and the return of the other, ohms between the legs of a bus on the ways to its terminators, ohms on one net on the ways
 * between the points, a function test and a pre-flight step on everything the function runs through. A conductor that another stands in
 * for changes no reading at the small currents of a test.
 */
public final class TestReach {
    private static final Set<String> LEGS = Set.of("ohms", "resistance", "continuity", "ring-out");

    private final Circuit circuit;
    private final Wiring wiring;
    private final Items items;
    private final SupplyLoss supply;
    private final SignalLoss signals;
    private final FunctionLoss functions;
    private final List<Reading> readings = new ArrayList<>();
    private final Set<String> unclear = new TreeSet<>();

    /**
     * One planned reading.
     *
     * @param name of the test, or of the function whose pre-flight step it is
     * @param ohms whether it is a measurement of ohms, which no exchange of two legs changes
     * @param opens conductors that change it when they open
     */
    public record Reading(String name, boolean ohms, BitSet opens) {}

    private TestReach(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.items = Items.of(circuit);
        this.supply = SupplyLoss.byWire(circuit);
        this.signals = SignalLoss.byWire(circuit);
        this.functions = FunctionLoss.byWire(circuit, supply, signals);
        wiring.aircraft().record().tests().forEach(this::test);
        for (AircraftFunction function : wiring.aircraft().functions()) {
            if (function.preflight().isKnown()) {
                readings.add(new Reading(function.name(), false, of(function)));
            }
        }
    }

    /** The reach of all planned readings of a circuit, found once. */
    public static TestReach of(Circuit circuit) {
        return circuit.know(TestReach.class, TestReach::new);
    }

    /** All planned readings: the tests, then the pre-flight steps. */
    public List<Reading> readings() {
        return List.copyOf(readings);
    }

    /** Tests of which the kind or a pin is not known. */
    public Set<String> unclear() {
        return Set.copyOf(unclear);
    }

    /** The conductors a function runs through alone. */
    public BitSet of(AircraftFunction function) {
        return wires(functions.of(function).orElse(Set.of()));
    }

    private void test(PlannedTest test) {
        Datum<String> kind = test.kind();
        List<Integer> pins = new ArrayList<>();
        List<Integer> units = new ArrayList<>();
        for (String name : test.pins()) {
            Optional<Integer> unit = wiring.directory().find(name);
            unit.ifPresent(units::add);
            if (unit.isEmpty()) {
                pin(name).ifPresentOrElse(pins::add, () -> unclear.add(test.id()));
            }
        }
        if (kind.isMissing()) {
            unclear.add(test.id());
            return;
        }
        String word = kind.or("").toLowerCase(Locale.ROOT);
        if (word.equals("function")) {
            pins.forEach(pin -> units.add(wiring.unitOf(pin)));
            readings.add(new Reading(test.id(), false, function(units)));
        } else if (pins.size() == 2) {
            boolean ohms = LEGS.contains(word);
            BitSet opens = ohms ? ohms(pins.get(0), pins.get(1)) : volts(pins.get(0), pins.get(1));
            readings.add(new Reading(test.id(), ohms, opens));
        }
    }

    private Optional<Integer> pin(String name) {
        return wiring.directory().resolve(new End(name)) instanceof Site.OnPin on
                ? Optional.of(wiring.pinVertex(on.unit(), on.pin()))
                : Optional.empty();
    }

    private BitSet volts(int a, int b) {
        Set<Integer> found = new TreeSet<>();
        for (int pin : new int[] {a, b}) {
            found.addAll(supply.reaches(pin) ? supply.point(pin) : supply.zero(pin));
        }
        return wires(found);
    }

    private BitSet ohms(int a, int b) {
        if (circuit.nets().same(a, b)) {
            return wires(signals.onNet(a, b));
        }
        Buses buses = Buses.of(circuit);
        Optional<BusHub> hub = buses.hubOfPin(a);
        boolean legs = wiring.is(a, PinRole.CAN_H) ? wiring.is(b, PinRole.CAN_L) : wiring.is(a, PinRole.CAN_L);
        if (hub.isEmpty() || !legs || !hub.equals(buses.hubOfPin(b))) {
            return new BitSet();
        }
        BusSegment segment = buses.segment(hub.get());
        Set<Integer> found = new TreeSet<>();
        for (TerminatorAt end : segment.on()) {
            found.addAll(signals.onBus(hub.get(), buses.hubs().get(end.hub())));
        }
        return wires(found);
    }

    /** Everything the functions that begin or end at a unit run through; without any, its supply. */
    private BitSet function(List<Integer> units) {
        BitSet found = new BitSet();
        for (int unit : units) {
            supply.of(unit).ifPresent(taking -> found.or(wires(taking)));
            String name = wiring.directory().name(unit);
            boolean chief = wiring.directory().type(unit).kind().is(UnitKind.CONTROLLER);
            for (AircraftFunction function : wiring.aircraft().functions()) {
                List<String> chain = function.chain();
                if (!chief
                        && !chain.isEmpty()
                        && (chain.get(0).equals(name)
                                || chain.get(chain.size() - 1).equals(name))) {
                    found.or(of(function));
                }
            }
        }
        return found;
    }

    private BitSet wires(Set<Integer> of) {
        BitSet set = new BitSet();
        for (int item : of) {
            int wire = items.wireOf(item);
            if (wire >= 0) {
                set.set(wire);
            }
        }
        return set;
    }

    /** Whether a conductor has a job: it joins two contacts that are used, in this state. */
    public boolean used(Wire wire) {
        return circuit.mated(wire) && used(wire.fromPin()) && used(wire.toPin());
    }

    private boolean used(int pin) {
        return !wiring.is(pin, PinRole.NONE) && !wiring.pin(pin).spare().is(true);
    }
}
