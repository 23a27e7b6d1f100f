package ringout.check.topology;

import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.PinRole;

/** Pins of unknown role that bus legs go to: whatever lies behind them cannot be judged. */
final class UnknownLegs {
    private final List<String> plugs;

    private UnknownLegs(Circuit circuit) {
        Wiring wiring = circuit.wiring();
        TreeSet<String> found = new TreeSet<>();
        for (Wire wire : circuit.wiring().wires()) {
            Optional<PinRole> from = wiring.role(wire.fromPin());
            Optional<PinRole> to = wiring.role(wire.toPin());
            if (from.isEmpty() && bus(to) && circuit.mated(wire)) {
                found.add(wiring.plugName(wiring.unitOf(wire.fromPin()), wiring.plugIndex(wire.fromPin())));
            } else if (to.isEmpty() && bus(from) && circuit.mated(wire)) {
                found.add(wiring.plugName(wiring.unitOf(wire.toPin()), wiring.plugIndex(wire.toPin())));
            }
        }
        this.plugs = List.copyOf(found);
    }

    static UnknownLegs of(Situation at) {
        return at.circuit().know(UnknownLegs.class, UnknownLegs::new);
    }

    private static boolean bus(Optional<PinRole> role) {
        return role.filter(known -> known == PinRole.CAN_H || known == PinRole.CAN_L)
                .isPresent();
    }

    boolean none() {
        return plugs.isEmpty();
    }

    /** Asks for the roles in one line, when there is something to ask. */
    void ask(Outcomes out) {
        if (!plugs.isEmpty()) {
            out.cannotTell(
                    "role of the pins of " + String.join(", ", plugs),
                    "look them up in the maker's pin-out",
                    5 * plugs.size(),
                    plugs.toArray(new String[0]));
        }
    }
}
