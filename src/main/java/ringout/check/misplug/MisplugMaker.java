package ringout.check.misplug;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ringout.check.form.Situation;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Pin;
import ringout.model.edit.Edit;
import ringout.model.edit.Path;
import ringout.model.shape.Shape;
import ringout.text.Span;

/** Words a wrong way to plug as a change of the list. */
final class MisplugMaker {
    private static final Shape<Lead> LEAD = Shape.of(Lead.class);

    private MisplugMaker() {}

    /** Two plugs, each in the socket of the other. */
    static Optional<Misplug> exchange(Situation at, PlugBody a, PlugBody b, String plugs) {
        Wiring wiring = at.wiring();
        if (!fits(wiring, a, b) || !fits(wiring, b, a)) {
            return Optional.empty();
        }
        List<String> sides =
                Stream.of(a, b).map(body -> side(at.circuit(), body)).sorted().toList();
        boolean harmless = Contacts.same(wiring, a.unit(), a.plug(), b.unit(), b.plug()) || sameFar(wiring, a, b);
        boolean currents = Contacts.otherSupply(at.circuit(), a.unit(), a.plug(), b.unit(), b.plug());
        return Optional.of(new Misplug(
                () -> {
                    List<Lead> leads = new ArrayList<>(wiring.aircraft().leads());
                    moved(wiring, a, b, leads);
                    moved(wiring, b, a, leads);
                    return edits(leads);
                },
                "exchange " + (a.unit() == b.unit()) + sides + (currents ? types(wiring, a, b) : ""),
                plugs,
                a.name(wiring) + " and " + b.name(wiring) + " exchanged",
                List.of(a.name(wiring), b.name(wiring)),
                Stream.of(a, b)
                        .flatMap(body -> body.ends().stream())
                        .map(PlugBody.End::row)
                        .toList(),
                critical(at, a, b),
                currents,
                harmless));
    }

    /** One plug in a free socket. */
    static Optional<Misplug> move(Situation at, PlugBody a, PlugBody free, String plugs) {
        Wiring wiring = at.wiring();
        if (!fits(wiring, a, free)) {
            return Optional.empty();
        }
        return Optional.of(new Misplug(
                () -> {
                    List<Lead> leads = new ArrayList<>(wiring.aircraft().leads());
                    moved(wiring, a, free, leads);
                    return edits(leads);
                },
                "move " + (a.unit() == free.unit()) + side(at.circuit(), a) + " to " + side(at.circuit(), free),
                plugs,
                a.name(wiring) + " in " + free.name(wiring),
                List.of(a.name(wiring), free.name(wiring)),
                a.ends().stream().map(PlugBody.End::row).toList(),
                critical(at, a, free),
                Contacts.otherSupply(at.circuit(), a.unit(), a.plug(), free.unit(), free.plug()),
                Contacts.same(wiring, a.unit(), a.plug(), free.unit(), free.plug())));
    }

    /** Whether every contact that is named has a counterpart. */
    private static boolean fits(Wiring wiring, PlugBody body, PlugBody to) {
        int count = to.socket(wiring).pins().size();
        return body.ends().stream()
                .allMatch(end -> !(end.site() instanceof Site.OnPin on) || place(wiring, body, on) < count);
    }

    private static int place(Wiring wiring, PlugBody body, Site.OnPin on) {
        return on.pin() - wiring.directory().layout(body.unit()).firstPin(body.plug());
    }

    /** Points the ends of a plug at another socket, contact by contact in order. */
    private static void moved(Wiring wiring, PlugBody body, PlugBody to, List<Lead> leads) {
        List<Pin> pins = to.socket(wiring).pins();
        for (PlugBody.End end : body.ends()) {
            String text = to.name(wiring);
            if (end.site() instanceof Site.OnPin on) {
                text += "-" + pins.get(place(wiring, body, on)).number();
            }
            leads.set(end.row(), LEAD.with(leads.get(end.row()), end.from() ? "from" : "to", new End(text)));
        }
    }

    /** The whole list with the rows concerned changed: one edit, whatever the rows are called. */
    static List<Edit> edits(List<Lead> leads) {
        return List.of(new Edit.Set(Span.NONE, Path.of("leads"), List.copyOf(leads)));
    }

    /** Where a supply meets another voltage, each type of unit is tried for itself. */
    private static List<String> types(Wiring wiring, PlugBody a, PlugBody b) {
        return Stream.of(a, b)
                .map(body -> wiring.directory().type(body.unit()).name())
                .sorted()
                .toList();
    }

    private static String side(Circuit circuit, PlugBody body) {
        return Contacts.of(circuit, body.unit(), body.plug()).toString();
    }

    /** Whether two leads of one make come from pin for pin the same points, so that it does not matter which is which. */
    private static boolean sameFar(Wiring wiring, PlugBody a, PlugBody b) {
        if (a.ends().size() != 1 || b.ends().size() != 1) {
            return false;
        }
        PlugBody.End one = a.ends().get(0);
        PlugBody.End other = b.ends().get(0);
        int far = PlugBody.unit(one.far());
        return !wiring.directory().isJoint(far)
                && far == PlugBody.unit(other.far())
                && one.from() == other.from()
                && one.site() instanceof Site.OnPlug
                && other.site() instanceof Site.OnPlug
                && one.lead(wiring).pins().equals(other.lead(wiring).pins())
                && one.lead(wiring).awg().equals(other.lead(wiring).awg())
                && one.lead(wiring).fuseA().equals(other.lead(wiring).fuseA())
                && Contacts.same(wiring, far, PlugBody.plug(one.far()), far, PlugBody.plug(other.far()));
    }

    static int critical(Situation at, PlugBody... bodies) {
        Set<Integer> units = new TreeSet<>();
        for (PlugBody body : bodies) {
            units.add(body.unit());
            body.ends().forEach(end -> units.add(PlugBody.unit(end.far())));
        }
        return (int) units.stream()
                .filter(unit -> at.flightCritical(at.directory().name(unit)))
                .count();
    }
}
