package ringout.solve.meter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.PartKind;
import ringout.model.PinMap;
import ringout.model.State;
import ringout.model.shape.Shape;

/** What may be wrong on the ways by which voltage comes to two points, each as a circuit of its own. */
final class VoltsFaults {
    /** A fault and how to build the circuit that has it. */
    record Trial(Fault fault, Supplier<Circuit> circuit) {}

    private final Circuit circuit;
    private final Wiring wiring;
    private final WireElements pieces;
    private final List<Trial> trials = new ArrayList<>();
    private final Set<Long> plugs = new LinkedHashSet<>();
    private final Map<Integer, Lead> leads = new LinkedHashMap<>();

    private VoltsFaults(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.pieces = WireElements.of(circuit);
    }

    static List<Trial> of(SupplyWays ways) {
        VoltsFaults found = new VoltsFaults(ways.circuit());
        ways.edges().forEach(found::edge);
        found.packs(ways.roots());
        found.plugs.forEach(key -> found.unseated((int) (key >> 32), key.intValue()));
        found.leads.forEach(found::crossed);
        return found.trials;
    }

    private void edge(int edge) {
        int ref = wiring.ref(edge);
        switch (wiring.kind(edge)) {
            case CONDUCTOR -> conductor(wiring.wires().get(ref), edge);
            case PART -> part(wiring.parts().get(ref), edge);
            case CONTACT, JOIN -> {}
        }
    }

    private void conductor(Wire wire, int edge) {
        open(
                Fault.Kind.OPEN_CONDUCTOR,
                wire.lead().id(),
                List.of(wiring.name(wire.fromPin())),
                List.of(wire.lead()),
                edge);
        for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
            long key = ((long) wiring.unitOf(pin) << 32) | wiring.plugIndex(pin);
            plugs.add(key);
        }
        leads.putIfAbsent(wire.leadIndex(), wire.lead());
    }

    private void open(Fault.Kind kind, String object, List<String> details, List<Lead> rows, int... edges) {
        List<Change> changes = new ArrayList<>();
        for (int edge : edges) {
            changes.add(new Change.Opened(edge));
        }
        trials.add(new Trial(new Fault(kind, object, details, rows, changes), () -> circuit.without(edges)));
    }

    private void part(Part part, int edge) {
        if (!(part.origin() instanceof Part.Inner inner)) {
            open(Fault.Kind.OPEN_PART, PartNames.of(wiring, part), List.of(), List.of(), edge);
            return;
        }
        if (!isSource(part)) {
            open(Fault.Kind.OPEN_PART, PartNames.of(wiring, part), List.of(), List.of(), edge);
        } else if (!inner.part().kind().is(PartKind.SOURCE)) {
            off(part, inner);
        }
    }

    private boolean isSource(Part part) {
        return PowerGraph.of(circuit).sources().stream().map(PowerSource::part).anyMatch(of -> of == part.index());
    }

    /** Every pack of the stacks the ways start from: a way starts at the plus of the lowest, or passes only some. */
    private void packs(Set<Integer> roots) {
        PowerGraph power = PowerGraph.of(circuit);
        for (PowerSource source : power.sources()) {
            boolean pack = source.kind() == PowerSource.Kind.PACK && power.works(source) && source.part() >= 0;
            if (pack && roots.contains(power.bottom(source).plus())) {
                Part part = wiring.parts().get(source.part());
                off(part, (Part.Inner) part.origin());
            }
        }
    }

    private void off(Part part, Part.Inner inner) {
        off(
                PartNames.of(wiring, part),
                wiring.directory().name(inner.unit()) + ":" + inner.part().name());
    }

    private void off(String words, String name) {
        Shape<State> shape = Shape.of(State.class);
        List<String> off = new ArrayList<>(circuit.state().off());
        off.add(name);
        State state = shape.with(circuit.state(), "off", List.copyOf(off));
        Fault fault = new Fault(Fault.Kind.SOURCE_OFF, words, List.of(), List.of(), List.of());
        trials.add(new Trial(fault, () -> Circuit.of(wiring, state)));
    }

    private void unseated(int unit, int plug) {
        List<Integer> contacts = new ArrayList<>();
        Set<Lead> rows = new LinkedHashSet<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                int contact = pieces.contact(wiring.wires().get(w), pin);
                if (circuit.live().hasEdge(contact)) {
                    contacts.add(contact);
                    rows.add(wiring.wires().get(w).lead());
                }
            }
        }
        if (!contacts.isEmpty() && !wiring.directory().isJoint(unit)) {
            int[] edges = contacts.stream().mapToInt(Integer::intValue).toArray();
            open(Fault.Kind.UNSEATED, wiring.plugName(unit, plug), List.of(), List.copyOf(rows), edges);
        }
    }

    /** Each pair of neighbours of a lead crossed at its to end: the list with these two pins exchanged, built anew. */
    private void crossed(int index, Lead lead) {
        List<Wire> wires = wiring.wires().stream()
                .filter(wire -> wire.leadIndex() == index)
                .toList();
        for (int i = 1; i < wires.size(); i++) {
            int at = i;
            List<String> pins = List.of(
                    wiring.name(wires.get(i - 1).fromPin()),
                    wiring.name(wires.get(i).fromPin()));
            Fault fault = new Fault(Fault.Kind.CROSSED, lead.id(), pins, List.of(lead), List.of());
            trials.add(new Trial(fault, () -> Circuit.of(Wiring.of(crossed(index, wires, at)), circuit.state())));
        }
    }

    private Aircraft crossed(int index, List<Wire> wires, int at) {
        List<PinMap.Pair> pairs = new ArrayList<>();
        for (int i = 0; i < wires.size(); i++) {
            Wire to = wires.get(i == at ? at - 1 : i == at - 1 ? at : i);
            pairs.add(new PinMap.Pair(
                    wiring.pin(wires.get(i).fromPin()).number(),
                    wiring.pin(to.toPin()).number()));
        }
        Lead lead = wires.get(0).lead();
        List<Lead> all = new ArrayList<>(wiring.aircraft().leads());
        all.set(index, Shape.of(Lead.class).with(lead, "pins", Datum.of(new PinMap(List.copyOf(pairs)))));
        return Shape.of(Aircraft.class).with(wiring.aircraft(), "leads", List.copyOf(all));
    }
}
