package ringout.solve.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.TerminatorAt;
import ringout.model.PartKind;

/** The single faults of a bus: its terminators and its pairs. */
final class BusFaults {
    /** A terminator: the unit it sits in, and the elements it is made of. */
    private record Terminator(String unit, boolean movable, List<Integer> elements) {}

    private final Circuit circuit;
    private final Wiring wiring;
    private final Buses buses;
    private final BusSegment segment;
    private final List<Terminator> on = new ArrayList<>();
    private final List<Terminator> off = new ArrayList<>();

    private BusFaults(Circuit circuit, BusSegment segment) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.buses = Buses.of(circuit);
        this.segment = segment;
        for (TerminatorAt at : segment.on()) {
            boolean movable = at.how() != TerminatorAt.How.BUILT_IN;
            on.add(new Terminator(wiring.directory().name(at.unit()), movable, elements(at)));
        }
        for (Part part : wiring.parts()) {
            if (part.origin() instanceof Part.Terminator of
                    && !circuit.live().hasEdge(part.edge())
                    && circuit.aboard(of.unit())
                    && here(part)) {
                off.add(new Terminator(wiring.directory().name(of.unit()), true, List.of(part.edge())));
            }
        }
    }

    private boolean here(Part part) {
        for (int hub : segment.hubs()) {
            BusHub at = buses.hubs().get(hub);
            if (at.high() == part.from() || at.low() == part.to()) {
                return true;
            }
        }
        return false;
    }

    /** The part of the port; where there is none, the resistors of the unit. */
    private List<Integer> elements(TerminatorAt at) {
        List<Integer> ports = new ArrayList<>();
        List<Integer> resistors = new ArrayList<>();
        for (Part part : wiring.parts()) {
            if (!circuit.live().hasEdge(part.edge())) {
                continue;
            }
            if (part.origin() instanceof Part.Terminator of && of.unit() == at.unit() && here(part)) {
                ports.add(part.edge());
            } else if (part.origin() instanceof Part.Inner inner
                    && inner.unit() == at.unit()
                    && inner.part().kind().is(PartKind.RESISTOR)) {
                resistors.add(part.edge());
            }
        }
        return ports.isEmpty() ? resistors : ports;
    }

    static List<Fault> of(Circuit circuit, BusSegment segment) {
        BusFaults found = new BusFaults(circuit, segment);
        List<Fault> faults = new ArrayList<>();
        found.on.forEach(
                t -> faults.add(terminators(Fault.Kind.TERMINATOR_MISSING, t, List.of(), List.of(t), List.of())));
        found.off.forEach(
                t -> faults.add(terminators(Fault.Kind.TERMINATOR_EXTRA, t, List.of(), List.of(), List.of(t))));
        found.moved(faults);
        found.allMissing().ifPresent(faults::add);
        List<Integer> links = new ArrayList<>(found.buses.trunk(segment).links());
        segment.links().stream().filter(link -> !links.contains(link)).forEach(links::add);
        links.forEach(link -> faults.add(found.open(found.buses.links().get(link))));
        return faults;
    }

    private void moved(List<Fault> faults) {
        for (Terminator from : on) {
            for (Terminator to : off) {
                if (from.movable()) {
                    faults.add(terminators(
                            Fault.Kind.TERMINATOR_MOVED, to, List.of(from.unit()), List.of(from), List.of(to)));
                }
            }
        }
    }

    private Optional<Fault> allMissing() {
        List<String> units = on.stream().map(Terminator::unit).toList();
        return on.size() < 2
                ? Optional.empty()
                : Optional.of(terminators(Fault.Kind.TERMINATORS_ALL_MISSING, on.get(0), units, on, List.of()));
    }

    private static Fault terminators(
            Fault.Kind kind, Terminator at, List<String> details, List<Terminator> opened, List<Terminator> closed) {
        List<Change> changes = new ArrayList<>();
        opened.forEach(t -> t.elements().forEach(element -> changes.add(new Change.Opened(element))));
        closed.forEach(t -> t.elements().forEach(element -> changes.add(new Change.Closed(element))));
        return new Fault(kind, at.unit(), details, List.of(), changes);
    }

    private Fault open(BusLink link) {
        WireElements pieces = WireElements.of(circuit);
        List<Change> changes = link.wires().stream()
                .<Change>map(wire -> new Change.Opened(pieces.conductor(wire)))
                .toList();
        List<String> ends = List.of(
                buses.name(buses.hubs().get(link.from())),
                buses.name(buses.hubs().get(link.to())));
        return new Fault(Fault.Kind.OPEN_PAIR, link.lead().id(), ends, link.leads(), changes);
    }
}
