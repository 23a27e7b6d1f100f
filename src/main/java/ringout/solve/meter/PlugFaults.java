package ringout.solve.meter;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.TypeLayout;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Plug;

/** What may be wrong with the plugs near the probed points: mated where it should be pulled, or in a look-alike socket. */
final class PlugFaults {
    private final Probed probed;
    private final Circuit circuit;
    private final Wiring wiring;
    private final WireElements pieces;
    private final Plugs plugs;
    private final List<Fault> faults = new ArrayList<>();

    private PlugFaults(Probed probed) {
        this.probed = probed;
        this.circuit = probed.circuit();
        this.wiring = probed.wiring();
        this.pieces = WireElements.of(circuit);
        this.plugs = new Plugs(probed);
    }

    static List<Fault> of(Probed probed) {
        PlugFaults found = new PlugFaults(probed);
        found.stillMated();
        found.plugs.all().forEach(found::wrongSocket);
        return found.faults;
    }

    private void stillMated() {
        Set<Integer> firstPins = new LinkedHashSet<>();
        for (Wire wire : wiring.wires()) {
            for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                boolean pulled = circuit.aboard(wiring.unitOf(pin)) && !circuit.mated(pin);
                if (pulled && (probed.near(pin) || probed.near(wire.endAt(pin)))) {
                    firstPins.add(wiring.firstPin(wiring.unitOf(pin), wiring.plugIndex(pin)));
                }
            }
        }
        firstPins.forEach(this::mated);
    }

    private void mated(int firstPin) {
        int unit = wiring.unitOf(firstPin);
        int plug = wiring.plugIndex(firstPin);
        List<Change> closed = new ArrayList<>();
        Set<Lead> rows = new LinkedHashSet<>();
        for (int pin = firstPin; pin < wiring.endPin(unit, plug); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                Wire wire = wiring.wires().get(w);
                closed.add(new Change.Closed(pieces.contact(wire, pin)));
                rows.add(wire.lead());
            }
        }
        faults.add(
                new Fault(Fault.Kind.STILL_MATED, wiring.plugName(unit, plug), List.of(), List.copyOf(rows), closed));
    }

    private void wrongSocket(Plugs.Mated here) {
        if (here.rows().size() != 1 || wiring.directory().isJoint(here.unit())) {
            return;
        }
        List<Plug> all = wiring.directory().type(here.unit()).plugs();
        for (int plug = 0; plug < all.size(); plug++) {
            if (plug != here.plug() && lookAlike(all.get(here.plug()), all.get(plug))) {
                into(here, plug);
            }
        }
    }

    private static boolean lookAlike(Plug right, Plug wrong) {
        Datum<String> family = right.family();
        boolean keysDiffer =
                right.key().isKnown() && wrong.key().isKnown() && !right.key().equals(wrong.key());
        return family.isKnown()
                && wrong.family().is(family.or(""))
                && right.pins().size() == wrong.pins().size()
                && !keysDiffer;
    }

    /** Into another socket; what is mated there goes into the one that becomes free. */
    private void into(Plugs.Mated here, int plug) {
        Plugs.Mated there = plugs.mated(here.unit(), plug);
        List<Change> changes = new ArrayList<>();
        move(here, plug, changes);
        move(there, here.plug(), changes);
        Lead lead = here.rows().get(0);
        List<String> sockets = List.of(here.name(), there.name());
        faults.add(new Fault(Fault.Kind.WRONG_SOCKET, lead.id(), sockets, List.of(lead), changes));
    }

    private void move(Plugs.Mated mated, int plug, List<Change> changes) {
        TypeLayout layout = wiring.directory().layout(mated.unit());
        for (int i = 0; i < mated.wires().size(); i++) {
            Wire wire = mated.wires().get(i);
            int pin = mated.pin(wiring, wire);
            int other = layout.pin(plug, wiring.pin(pin).number());
            int contact = mated.contacts().get(i);
            changes.add(
                    other < 0
                            ? new Change.Opened(contact)
                            : new Change.Moved(contact, wiring.pinVertex(mated.unit(), other), wire.endAt(pin)));
        }
    }
}
