package ringout.graph.bus;

import java.util.HashMap;
import java.util.Map;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/**
 * Which conductors run together as one lead. A row between two plugs is a lead of its own; of a list with one row a
 * conductor, rows with the same id belong together, and so do rows between the same two plugs, or from one plug to joints.
 */
final class Runs {
    private final Wiring wiring;
    private final Map<String, Integer> known = new HashMap<>();

    Runs(Wiring wiring) {
        this.wiring = wiring;
    }

    /** A number that conductors of one lead share. */
    int of(Wire wire) {
        int row = wire.leadIndex();
        if (wiring.from(row) instanceof Site.OnPlug && wiring.to(row) instanceof Site.OnPlug) {
            boolean joints = joint(wire.fromPin()) || joint(wire.toPin());
            return joints ? among(wire) : row;
        }
        return among(wire);
    }

    private boolean joint(int pin) {
        return wiring.directory().isJoint(wiring.unitOf(pin));
    }

    private int among(Wire wire) {
        String id = "id " + wire.lead().id();
        String plugs = "plugs " + plug(wire.fromPin()) + " " + plug(wire.toPin());
        boolean loose = joint(wire.fromPin()) && joint(wire.toPin());
        Integer run = wire.lead().id().isEmpty() ? null : known.get(id);
        if (run == null && !loose) {
            run = known.get(plugs);
        }
        int found = run == null ? wire.leadIndex() : run;
        known.putIfAbsent(id, found);
        known.putIfAbsent(plugs, found);
        return found;
    }

    private int plug(int pin) {
        return joint(pin) ? -1 : wiring.firstPin(wiring.unitOf(pin), wiring.plugIndex(pin));
    }
}
