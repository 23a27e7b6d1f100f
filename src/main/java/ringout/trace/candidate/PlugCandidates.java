package ringout.trace.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.check.misplug.LookAlikes;
import ringout.check.misplug.Misplug;
import ringout.graph.Site;
import ringout.graph.TypeLayout;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.model.End;
import ringout.solve.meter.Change;

/** What may be wrong with plugs: not seated, in a look-alike socket, or open behind the socket. */
final class PlugCandidates {
    /** To seat a plug, hear its latch and tug it. Judgement, no source. */
    private static final double SEAT_MINUTES = 2;

    private final Bench bench;
    private final Wiring wiring;

    private PlugCandidates(Bench bench) {
        this.bench = bench;
        this.wiring = bench.wiring();
    }

    static void addTo(Bench bench) {
        PlugCandidates made = new PlugCandidates(bench);
        for (int unit = 0; unit < bench.wiring().aircraft().units().size(); unit++) {
            int plugs = bench.wiring().directory().type(unit).plugs().size();
            for (int plug = 0; plug < plugs; plug++) {
                made.unseated(unit, plug);
            }
        }
        LookAlikes.all(new Situation(bench.circuit()), new Gaps()).forEach(made::wrongSocket);
        Buses.of(bench.circuit()).hubs().stream().filter(BusHub::member).forEach(made::passThrough);
    }

    private void unseated(int unit, int plug) {
        Map<Integer, Wire> contacts = bench.contacts(unit, plug);
        if (contacts.isEmpty()) {
            return;
        }
        String name = wiring.plugName(unit, plug);
        bench.add(
                FaultKind.NOT_SEATED,
                name,
                new Defect.Unseated(unit, plug),
                name + " not seated",
                Bench.rows(contacts.values()),
                new Repair(Repair.Sort.PLUG, name, "seat " + name + ", hear the latch, tug it", SEAT_MINUTES),
                bench.places().atPlug(unit, plug),
                bench.places().ofPlug(unit, plug),
                contacts.keySet().stream().<Change>map(Change.Opened::new).toList());
    }

    private void wrongSocket(Misplug way) {
        if (way.harmless() || way.sockets().size() != 2) {
            return;
        }
        Site right = wiring.directory().resolve(new End(way.sockets().get(0)));
        Site wrong = wiring.directory().resolve(new End(way.sockets().get(1)));
        if (right instanceof Site.OnPlug here && wrong instanceof Site.OnPlug there) {
            List<Change> changes = new ArrayList<>();
            Map<Integer, Wire> own = bench.contacts(here.unit(), here.plug());
            Map<Integer, Wire> others = bench.contacts(there.unit(), there.plug());
            move(here, there, own, changes);
            move(there, here, others, changes);
            List<Wire> wires = new ArrayList<>(own.values());
            wires.addAll(others.values());
            SortedSet<Circumstance> told = bench.places().ofPlug(here.unit(), here.plug());
            told.addAll(bench.places().ofPlug(there.unit(), there.plug()));
            bench.add(
                    FaultKind.WRONG_PORT,
                    way.words(),
                    new Defect.WrongSocket(here.unit(), here.plug(), there.unit(), there.plug()),
                    title(way, own.values(), others.values()),
                    Bench.rows(wires),
                    new Repair(
                            Repair.Sort.PLUG,
                            way.sockets().get(0),
                            "plug " + String.join(" and ", Bench.rows(wires)) + " where the label says",
                            SEAT_MINUTES),
                    bench.places().atPlugs(here, there),
                    told,
                    changes);
        }
    }

    private static String title(Misplug way, Iterable<Wire> own, Iterable<Wire> others) {
        String first = String.join(" and ", Bench.rows(own));
        String second = String.join(" and ", Bench.rows(others));
        String one = first + " in the look-alike socket " + way.sockets().get(1);
        return second.isEmpty()
                ? one + " instead of " + way.sockets().get(0)
                : one + ", " + second + " in " + way.sockets().get(0);
    }

    /** Each contact goes to the pin of equal number in the other socket; without one it stays open. */
    private void move(Site.OnPlug from, Site.OnPlug to, Map<Integer, Wire> contacts, List<Change> changes) {
        TypeLayout layout = wiring.directory().layout(to.unit());
        contacts.forEach((contact, wire) -> {
            int pin = at(wire, from);
            int other = layout.pin(to.plug(), wiring.pin(pin).number());
            changes.add(
                    other < 0
                            ? new Change.Opened(contact)
                            : new Change.Moved(contact, wiring.pinVertex(to.unit(), other), wire.endAt(pin)));
        });
    }

    private int at(Wire wire, Site.OnPlug plug) {
        int pin = wire.fromPin();
        return wiring.unitOf(pin) == plug.unit() && wiring.plugIndex(pin) == plug.plug() ? pin : wire.toPin();
    }

    /** A port with two sockets passes the bus on; each of the ways inside may be open. */
    private void passThrough(BusHub hub) {
        List<Integer> sockets = new ArrayList<>();
        int plugs = wiring.directory().type(hub.unit()).plugs().size();
        for (int plug = 0; plug < plugs; plug++) {
            if (!joins(hub, plug).isEmpty() && !bench.contacts(hub.unit(), plug).isEmpty()) {
                sockets.add(plug);
            }
        }
        if (sockets.size() < 2) {
            return;
        }
        for (int plug : sockets) {
            String name = wiring.plugName(hub.unit(), plug);
            bench.add(
                    FaultKind.PASS_THROUGH_OPEN,
                    name,
                    new Defect.PassThroughOpen(hub.unit(), plug),
                    bench.unit(hub.unit()) + " pass-through open inside at " + name,
                    List.of(),
                    Repair.unit(bench.unit(hub.unit())),
                    bench.places().atUnit(hub.unit()),
                    bench.places().ofUnit(hub.unit()),
                    joins(hub, plug).stream().<Change>map(Change.Opened::new).toList());
        }
    }

    /** The joins inside from the pins of a socket to the legs of a port. */
    private List<Integer> joins(BusHub hub, int plug) {
        List<Integer> found = new ArrayList<>();
        int first = wiring.firstPin(hub.unit(), plug);
        int end = wiring.endPin(hub.unit(), plug);
        for (int leg : new int[] {hub.high(), hub.low()}) {
            for (int edge : leg < 0 ? new int[0] : edges(leg)) {
                int pin = wiring.graph().from(edge) == leg
                        ? wiring.graph().to(edge)
                        : wiring.graph().from(edge);
                if (wiring.kind(edge) == ringout.graph.EdgeKind.JOIN && pin >= first && pin < end) {
                    found.add(edge);
                }
            }
        }
        return found;
    }

    private int[] edges(int vertex) {
        List<Integer> found = new ArrayList<>();
        var graph = bench.circuit().live();
        for (int end = graph.endSlot(vertex), s = graph.firstSlot(vertex); s < end; s = graph.nextSlot(s, end)) {
            found.add(graph.slotEdge(s));
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }
}
