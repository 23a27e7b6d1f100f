package ringout.check.misplug;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Pin;
import ringout.model.PinMap;
import ringout.model.Plug;
import ringout.model.shape.Shape;

/** Finds the wrong ways a plug goes on an open header: beside its place, or turned round. */
public final class Shifts {
    /** Name of the datum it may lack. */
    public static final String SHROUD = "shroud or key";

    private static final Shape<Lead> LEAD = Shape.of(Lead.class);

    private final Situation at;
    private final Wiring wiring;
    private final Gaps gaps;
    private final List<Misplug> ways = new ArrayList<>();

    private Shifts(Situation at, Gaps gaps) {
        this.at = at;
        this.wiring = at.wiring();
        this.gaps = gaps;
    }

    /** All of them; headers of which nobody said whether they have a shroud are noted. */
    public static List<Misplug> all(Situation at, Gaps gaps) {
        Shifts found = new Shifts(at, gaps);
        for (PlugBody body : PlugBody.all(found.wiring)) {
            Plug socket = body.socket(found.wiring);
            boolean round = socket.family().or("").toLowerCase(Locale.ROOT).contains("round");
            if (at.circuit().aboard(body.unit()) && socket.pins().size() > 1 && !round) {
                found.look(body, socket);
            }
        }
        return found.ways;
    }

    private void look(PlugBody body, Plug socket) {
        Datum<String> key =
                socket.key().isKnown() ? socket.key() : body.leadKey(wiring).orElse(socket.key());
        if (socket.shrouded().is(true) || key.isKnown()) {
            return;
        }
        if (socket.shrouded().isMissing()) {
            gaps.add(SHROUD, body.name(wiring));
            return;
        }
        if (socket.shrouded().is(false)) {
            int count = socket.pins().size();
            for (int by = 1 - count; by < count; by++) {
                if (Math.abs(by) == 1 || (by > 0 && by <= free(body, count))) {
                    add(body, by, false);
                }
            }
            add(body, 0, true);
        }
    }

    /** How many contacts of the header stay free behind the last one with a conductor: so far the plug may be shorter. */
    private int free(PlugBody body, int count) {
        int last = 0;
        for (PlugBody.End end : body.ends()) {
            for (int place : places(body, end)) {
                last = Math.max(last, place + 1);
            }
        }
        return count - last;
    }

    private List<Integer> places(PlugBody body, PlugBody.End end) {
        List<Integer> places = new ArrayList<>();
        for (PinMap.Pair pair : pairs(end)) {
            int pin = wiring.directory().layout(body.unit()).pin(body.plug(), end.from() ? pair.from() : pair.to());
            places.add(pin - wiring.directory().layout(body.unit()).firstPin(body.plug()));
        }
        return places;
    }

    /** The conductors of a lead between two plugs, pin to pin, as the graph has them. */
    private List<PinMap.Pair> pairs(PlugBody.End end) {
        List<PinMap.Pair> pairs = new ArrayList<>();
        wiring.wires().stream()
                .filter(wire -> wire.leadIndex() == end.row())
                .forEach(wire -> pairs.add(new PinMap.Pair(
                        wiring.pin(wire.fromPin()).number(),
                        wiring.pin(wire.toPin()).number())));
        return pairs;
    }

    private void add(PlugBody body, int by, boolean turned) {
        List<Lead> leads = new ArrayList<>(wiring.aircraft().leads());
        StringBuilder kind = new StringBuilder();
        boolean harmless = true;
        for (PlugBody.End end : body.ends()) {
            if (!(end.site() instanceof Site.OnPlug) || !(end.far() instanceof Site.OnPlug)) {
                return; // rows of single contacts name no plug that could be put on wrongly
            }
            List<PinMap.Pair> moved = new ArrayList<>();
            for (PinMap.Pair pair : pairs(end)) {
                Optional<PinMap.Pair> then = moved(body, end, pair, by, turned);
                then.ifPresent(moved::add);
                harmless &= then.isPresent() && same(body, end, pair, then.get());
                kind.append(role(body, end.from() ? pair.from() : pair.to()))
                        .append('>')
                        .append(then.map(now -> role(body, end.from() ? now.from() : now.to()))
                                .orElse("open"))
                        .append(' ');
            }
            leads.set(end.row(), LEAD.with(leads.get(end.row()), "pins", Datum.of(new PinMap(moved))));
        }
        String name = body.name(wiring);
        ways.add(new Misplug(
                () -> MisplugMaker.edits(leads),
                kind.toString(),
                body.socket(wiring).family().or("open header"),
                name + (turned ? " turned round" : " shifted by " + by),
                List.of(name),
                body.ends().stream().map(PlugBody.End::row).toList(),
                MisplugMaker.critical(at, body),
                false,
                harmless));
    }

    private Optional<PinMap.Pair> moved(PlugBody body, PlugBody.End end, PinMap.Pair pair, int by, boolean turned) {
        List<Pin> pins = body.socket(wiring).pins();
        int place = index(body, end.from() ? pair.from() : pair.to());
        int then = turned ? pins.size() - 1 - place : place + by;
        if (then < 0 || then >= pins.size()) {
            return Optional.empty();
        }
        String number = pins.get(then).number();
        return Optional.of(end.from() ? new PinMap.Pair(number, pair.to()) : new PinMap.Pair(pair.from(), number));
    }

    private int index(PlugBody body, String number) {
        return wiring.directory().layout(body.unit()).pin(body.plug(), number)
                - wiring.directory().layout(body.unit()).firstPin(body.plug());
    }

    private String role(PlugBody body, String number) {
        return Contacts.of(at.circuit(), body.unit(), body.plug()).get(index(body, number));
    }

    /** Whether a conductor stays on the same point inside the unit. */
    private boolean same(PlugBody body, PlugBody.End end, PinMap.Pair was, PinMap.Pair now) {
        var layout = wiring.directory().layout(body.unit());
        int before = layout.pointOf(layout.pin(body.plug(), end.from() ? was.from() : was.to()));
        return before >= 0 && before == layout.pointOf(layout.pin(body.plug(), end.from() ? now.from() : now.to()));
    }
}
