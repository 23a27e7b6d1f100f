package ringout.solve.meter;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Lead;
import ringout.model.PartKind;
import ringout.solve.MeterElement;

/** What may be open of the way the meter's current takes: conductors, contacts, plugs, fuses, switches. */
final class OpenFaults {
    private final Probed probed;
    private final Wiring wiring;
    private final WireElements pieces;
    private final List<Fault> faults = new ArrayList<>();

    private OpenFaults(Probed probed) {
        this.probed = probed;
        this.wiring = probed.wiring();
        this.pieces = WireElements.of(probed.circuit());
    }

    static List<Fault> of(Probed probed) {
        OpenFaults found = new OpenFaults(probed);
        found.wiring.wires().forEach(found::conductor);
        found.wiring.parts().forEach(found::part);
        new Plugs(probed).all().forEach(found::plug);
        return found.faults;
    }

    private void conductor(Wire wire) {
        int conductor = pieces.conductor(wire);
        if (probed.loaded(conductor)) {
            add(Fault.Kind.OPEN_CONDUCTOR, wire, wire.fromPin(), conductor);
        }
        contact(wire, pieces.fromContact(wire), wire.fromPin(), wire.fromEnd());
        contact(wire, pieces.toContact(wire), wire.toPin(), wire.toEnd());
    }

    /** A contact reads as its conductor does, unless the meter is between the two. */
    private void contact(Wire wire, int contact, int pin, int end) {
        if (probed.loaded(contact) && probed.isPoint(end)) {
            add(Fault.Kind.OPEN_CONTACT, wire, pin, contact);
        }
    }

    private void add(Fault.Kind kind, Wire wire, int pin, int element) {
        faults.add(new Fault(
                kind,
                wire.lead().id(),
                List.of(wiring.name(pin)),
                List.of(wire.lead()),
                List.of(new Change.Opened(element))));
    }

    private void plug(Plugs.Mated plug) {
        List<Integer> loaded = plug.contacts().stream().filter(probed::loaded).toList();
        if (loaded.size() > 1) {
            List<Change> opened =
                    plug.contacts().stream().<Change>map(Change.Opened::new).toList();
            faults.add(new Fault(Fault.Kind.UNSEATED, plug.name(), List.of(), plug.rows(), opened));
        }
    }

    private void part(Part part) {
        if (part.origin() instanceof Part.Terminator) {
            return;
        }
        MeterElement element = probed.element(part.edge());
        boolean isSwitch =
                part.origin() instanceof Part.Inner inner && inner.part().kind().is(PartKind.SWITCH);
        if (probed.loaded(part.edge())) {
            add(Fault.Kind.OPEN_PART, part, new Change.Opened(part.edge()));
        } else if (isSwitch && !element.live() && (probed.near(element.a()) || probed.near(element.b()))) {
            add(Fault.Kind.CLOSED_SWITCH, part, new Change.Closed(part.edge()));
        }
    }

    private void add(Fault.Kind kind, Part part, Change change) {
        List<Lead> rows = part.origin() instanceof Part.LeadFuse fuse
                ? List.of(wiring.wires().get(fuse.wire()).lead())
                : List.of();
        faults.add(new Fault(kind, PartNames.of(wiring, part), List.of(), rows, List.of(change)));
    }
}
