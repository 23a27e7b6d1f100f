package ringout.solve.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.solve.meter.BusTable.Side;
import ringout.solve.meter.BusTable.Spot;

/** Asks what an ohmmeter shows at every plug of a bus. */
public final class BusQuestion {
    private final Circuit circuit;
    private final MeterNetwork network;

    private BusQuestion(Circuit circuit) {
        this.circuit = circuit;
        this.network = MeterNetwork.of(circuit);
    }

    /** The wired pieces of the bus of a name, without regard to case; also found by its name in words. */
    public static List<BusSegment> named(Circuit circuit, String name) {
        Buses buses = Buses.of(circuit);
        return buses.segments().stream()
                .filter(BusSegment::wired)
                .filter(segment -> segment.name().equalsIgnoreCase(name)
                        || buses.name(segment).equalsIgnoreCase(name))
                .toList();
    }

    /** The wired piece of bus that a plug is on, if it is on one. */
    public static List<BusSegment> at(Circuit circuit, int unit, int plug) {
        Buses buses = Buses.of(circuit);
        Wiring wiring = circuit.wiring();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            Optional<BusSegment> segment =
                    buses.hubOfPin(pin).map(buses::segment).filter(BusSegment::wired);
            if (segment.isPresent()) {
                return List.of(segment.get());
            }
        }
        return List.of();
    }

    /** The names of all buses that join anything, in order. */
    public static List<String> names(Circuit circuit) {
        Buses buses = Buses.of(circuit);
        return buses.segments().stream()
                .filter(BusSegment::wired)
                .map(segment -> segment.name().isEmpty() ? buses.name(segment) : segment.name())
                .distinct()
                .sorted()
                .toList();
    }

    /** The table of one piece of bus. */
    public static BusTable ask(Circuit circuit, BusSegment segment) {
        return new BusQuestion(circuit).table(segment, BusFaults.of(circuit, segment));
    }

    /** The table of one piece of bus with its first row only: the bus as listed. */
    public static BusTable asListed(Circuit circuit, BusSegment segment) {
        return new BusQuestion(circuit).table(segment, List.of());
    }

    private BusTable table(BusSegment segment, List<Fault> faults) {
        List<BusSpots.Place> places = BusSpots.of(circuit, segment);
        List<Spot> spots = new ArrayList<>();
        for (Side side : Side.values()) {
            places.forEach(
                    place -> spots.add(new Spot(place.name(), place.high().lead(), side)));
        }
        List<BusTable.Row> rows = new ArrayList<>();
        rows.add(row(places, Optional.empty()));
        faults.forEach(fault -> rows.add(row(places, Optional.of(fault))));
        return new BusTable(Buses.of(circuit).name(segment), circuit.state().name(), spots, List.copyOf(rows));
    }

    private BusTable.Row row(List<BusSpots.Place> places, Optional<Fault> fault) {
        List<Change> changes = fault.map(Fault::changes).orElse(List.of());
        List<Reading> readings = new ArrayList<>();
        for (Side side : Side.values()) {
            places.forEach(place -> readings.add(reading(place, side, changes)));
        }
        return new BusTable.Row(fault, List.copyOf(readings));
    }

    private Reading reading(BusSpots.Place place, Side side, List<Change> fault) {
        if (side == Side.MATED) {
            return network.reading(place.highPin(), place.lowPin(), fault);
        }
        List<Change> changes = new ArrayList<>(fault);
        changes.addAll(pull(place));
        return side == Side.INTO_UNIT
                ? network.reading(place.highPin(), place.lowPin(), changes)
                : network.reading(
                        place.high().endAt(place.highPin()), place.low().endAt(place.lowPin()), changes);
    }

    /** Pulls the whole plug: every contact of it opens. */
    private List<Change> pull(BusSpots.Place place) {
        Wiring wiring = circuit.wiring();
        int unit = wiring.unitOf(place.highPin());
        int plug = wiring.plugIndex(place.highPin());
        List<Change> opened = new ArrayList<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                Wire wire = wiring.wires().get(w);
                opened.add(new Change.Opened(WireElements.of(circuit).contact(wire, pin)));
            }
        }
        return opened;
    }
}
