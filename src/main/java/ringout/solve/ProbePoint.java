package ringout.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.Directory;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Pin;
import ringout.text.Nearest;

/**
 * Finds the point a meter is put on: {@code FC-C2-H} is the unit's side of a contact, {@code W68@GMC-C1-H} the lead's side
 * of it, the name of a joint the joint. H and L come from the role of the pin.
 */
public final class ProbePoint {
    private static final int NAMED = 12;

    /** Where a name leads. */
    public sealed interface Aim {}

    /**
     * A point of the aircraft.
     *
     * @param vertex vertex of the typed graph
     */
    public record Hit(int vertex) implements Aim {}

    /**
     * Nothing a meter can be put on.
     *
     * @param why what is wrong with the name
     * @param hint nearest match, or what there is; may be empty
     */
    public record Missed(String why, String hint) implements Aim {}

    private ProbePoint() {}

    /** The vertex of a point by its name, if there is one. */
    public static Optional<Integer> find(Wiring wiring, String name) {
        return aim(wiring, name) instanceof Hit hit ? Optional.of(hit.vertex()) : Optional.empty();
    }

    /** The point of a name, or why there is none. */
    public static Aim aim(Wiring wiring, String name) {
        int at = name.indexOf('@');
        if (at < 0) {
            return pin(wiring, name);
        }
        Aim pin = pin(wiring, name.substring(at + 1));
        return pin instanceof Hit hit ? end(wiring, name.substring(0, at).strip(), hit.vertex()) : pin;
    }

    private static Aim pin(Wiring wiring, String name) {
        Directory directory = wiring.directory();
        Site site = directory.resolve(new End(name));
        if (site instanceof Site.OnPin on) {
            return new Hit(wiring.pinVertex(on.unit(), on.pin()));
        }
        if (site instanceof Site.OnPlug on) {
            int first = wiring.firstPin(on.unit(), on.plug());
            return wiring.endPin(on.unit(), on.plug()) == first + 1 ? new Hit(first) : several(wiring, on);
        }
        Site.Loose loose = (Site.Loose) site;
        return new Missed(loose.why(), nearest(wiring, name).orElse(loose.hint()));
    }

    /** The nearest pin of the unit that the name begins with. */
    private static Optional<String> nearest(Wiring wiring, String name) {
        Directory directory = wiring.directory();
        for (int i = name.length() - 1; i > 0; i--) {
            Optional<Integer> unit = directory.find(name.substring(0, i).strip());
            if (unit.isPresent()) {
                return Nearest.to(name, pins(wiring, unit.get())).map(near -> "did you mean " + near + "?");
            }
        }
        return Optional.empty();
    }

    private static List<String> pins(Wiring wiring, int unit) {
        List<String> names = new ArrayList<>();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            String plug = wiring.plugName(unit, wiring.plugIndex(pin));
            names.add(wiring.name(pin));
            wiring.pin(pin).name().known().ifPresent(word -> names.add(plug + "-" + word));
        }
        return names;
    }

    private static Aim several(Wiring wiring, Site.OnPlug on) {
        List<String> pins = new ArrayList<>();
        int count = wiring.endPin(on.unit(), on.plug()) - wiring.firstPin(on.unit(), on.plug());
        for (int i = 0; i < Math.min(count, NAMED); i++) {
            Pin pin = wiring.pin(wiring.firstPin(on.unit(), on.plug()) + i);
            String says = pin.name().known().map(word -> " (" + word + ")").orElse("");
            pins.add(pin.number() + says);
        }
        String plug = wiring.plugName(on.unit(), on.plug());
        return new Missed(
                "'" + plug + "' has " + count + " pins: name one",
                String.join(", ", pins) + (count > NAMED ? ", ..." : ""));
    }

    private static Aim end(Wiring wiring, String lead, int pin) {
        List<String> here = new ArrayList<>();
        for (int w : wiring.wiresAt(pin)) {
            Wire wire = wiring.wires().get(w);
            if (wire.lead().id().equalsIgnoreCase(lead)) {
                return new Hit(wire.endAt(pin));
            }
            here.add(wire.lead().id());
        }
        return new Missed("no conductor of lead '" + lead + "' at " + wiring.name(pin), hint(wiring, lead, here));
    }

    private static String hint(Wiring wiring, String lead, List<String> here) {
        if (!here.isEmpty()) {
            return "there is " + String.join(", ", here);
        }
        List<Lead> leads = wiring.aircraft().leads();
        return leads.stream()
                .filter(row -> row.id().equalsIgnoreCase(lead))
                .findFirst()
                .map(row -> row.id() + " goes from " + row.from().text() + " to "
                        + row.to().text())
                .orElseGet(() -> Nearest.hint(lead, leads.stream().map(Lead::id).toList()));
    }
}
