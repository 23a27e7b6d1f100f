package ringout.solve;

import java.util.Optional;
import ringout.graph.Directory;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.End;

/**
 * Finds the point a meter is put on: {@code FC-C2-H} is the unit's side of a contact, {@code W68@GMC-C1-H} the lead's side
 * of it. H and L come from the role of the pin.
 */
public final class ProbePoint {
    private ProbePoint() {}

    /** The vertex of a point by its name, if there is one. */
    public static Optional<Integer> find(Wiring wiring, String name) {
        int at = name.indexOf('@');
        if (at < 0) {
            return pin(wiring, name);
        }
        String lead = name.substring(0, at).strip();
        return pin(wiring, name.substring(at + 1)).flatMap(pin -> end(wiring, lead, pin));
    }

    private static Optional<Integer> pin(Wiring wiring, String name) {
        Directory directory = wiring.directory();
        Site site = directory.resolve(new End(name));
        if (site instanceof Site.OnPin on) {
            return Optional.of(wiring.pinVertex(on.unit(), on.pin()));
        }
        if (site instanceof Site.OnPlug on) {
            int first = wiring.firstPin(on.unit(), on.plug());
            return wiring.endPin(on.unit(), on.plug()) == first + 1 ? Optional.of(first) : Optional.empty();
        }
        return Optional.empty();
    }

    private static Optional<Integer> end(Wiring wiring, String lead, int pin) {
        for (int w : wiring.wiresAt(pin)) {
            Wire wire = wiring.wires().get(w);
            if (wire.lead().id().equalsIgnoreCase(lead)) {
                return Optional.of(wire.endAt(pin));
            }
        }
        return Optional.empty();
    }
}
