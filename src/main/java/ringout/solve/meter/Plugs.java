package ringout.solve.meter;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Lead;

/** The plugs that have leads, with the contacts a lead makes there. */
final class Plugs {
    /**
     * A plug with everything that is mated with it.
     *
     * @param unit number of its unit
     * @param plug number of the plug in the type
     * @param name UNIT-PLUG
     * @param contacts numbers of the contact elements
     * @param wires the conductors
     * @param rows the leads
     */
    record Mated(int unit, int plug, String name, List<Integer> contacts, List<Wire> wires, List<Lead> rows) {
        /** The pin of one of its conductors here. */
        int pin(Wiring wiring, Wire wire) {
            boolean from = wiring.unitOf(wire.fromPin()) == unit && wiring.plugIndex(wire.fromPin()) == plug;
            return from ? wire.fromPin() : wire.toPin();
        }
    }

    private final Probed probed;
    private final Map<Long, List<Wire>> wires = new LinkedHashMap<>();

    /** Looks only at conductors that conduct to one of the probed points. */
    Plugs(Probed probed) {
        this.probed = probed;
        Wiring wiring = probed.wiring();
        for (Wire wire : wiring.wires()) {
            note(wire, wire.fromPin());
            note(wire, wire.toPin());
        }
    }

    private void note(Wire wire, int pin) {
        if (probed.near(pin) || probed.near(wire.endAt(pin))) {
            Wiring wiring = probed.wiring();
            wires.computeIfAbsent(key(wiring.unitOf(pin), wiring.plugIndex(pin)), key -> new ArrayList<>())
                    .add(wire);
        }
    }

    private static long key(int unit, int plug) {
        return ((long) unit << 32) | plug;
    }

    /** Every plug, in the order of the rows. */
    List<Mated> all() {
        List<Mated> all = new ArrayList<>();
        wires.forEach((key, here) -> all.add(mated((int) (key >> 32), key.intValue())));
        return all;
    }

    /** A plug with everything that is mated with it; nothing when it is free. */
    Mated mated(int unit, int plug) {
        Wiring wiring = probed.wiring();
        WireElements pieces = WireElements.of(probed.circuit());
        List<Integer> contacts = new ArrayList<>();
        List<Wire> here = new ArrayList<>();
        Set<Lead> rows = new LinkedHashSet<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            for (int w : wiring.wiresAt(pin)) {
                Wire wire = wiring.wires().get(w);
                int contact = pieces.contact(wire, pin);
                if (probed.element(contact).live()) {
                    contacts.add(contact);
                    here.add(wire);
                    rows.add(wire.lead());
                }
            }
        }
        return new Mated(unit, plug, wiring.plugName(unit, plug), contacts, here, List.copyOf(rows));
    }
}
