package ringout.check.topology;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.Buses;
import ringout.model.Bus;
import ringout.model.Datum;
import ringout.text.Nearest;

/**
 * Members declared on one bus that are not joined.
 *
 * <p>Why it matters: the pieces do not hear each other, and each piece is terminated wrong.
 *
 * <p>Condition: the members declared on a bus lie in more than one piece, where only leads with H and L both intact join.
 * S4 when each piece is a whole bus with its own controller and two terminators: then two buses share a name.
 *
 * <p>Does not see: units nobody declared on a bus; what a state takes off on purpose.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T04",
        name = "bus-in-pieces",
        severity = Severity.S2,
        since = "0.1",
        needs = {"declared bus of each member", "role of each pin of the bus leads"})
public final class BusInPieces implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (Removals.judgedElsewhere(at)) {
            return;
        }
        UnknownLegs unknown = UnknownLegs.of(at);
        Buses buses = Buses.of(at.circuit());
        Map<String, List<BusHub>> byBus = new TreeMap<>();
        BitSet withPort = new BitSet();
        boolean removed = Removals.in(at.circuit().state());
        for (BusHub hub : buses.hubs()) {
            withPort.set(hub.unit());
            if (!removed || !pulledOnPurpose(at, buses, hub)) {
                buses.declared(hub.index())
                        .ifPresent(bus -> byBus.computeIfAbsent(bus, key -> new ArrayList<>())
                                .add(hub));
            }
        }
        if (!byBus.isEmpty()) {
            unknown.ask(out);
            askThrough(at, out);
        }
        byBus.forEach((bus, hubs) -> look(at, out, buses, bus, hubs));
        at.aircraft().buses().forEach(bus -> listed(at, out, bus, withPort));
    }

    /** Whether the sockets of a port with leads in several are joined by copper must be known. */
    private static void askThrough(Situation at, Outcomes out) {
        TreeSet<String> open = new TreeSet<>();
        for (BusHub hub : Buses.of(at.circuit()).hubs()) {
            boolean asked = at.directory()
                    .layout(hub.unit())
                    .port(hub.typePort())
                    .filter(port -> port.passThrough() instanceof Datum.Unknown)
                    .isPresent();
            if (asked && !HubPlugs.wires(at, Buses.of(at.circuit()), hub).isEmpty()) {
                open.add(at.directory().name(hub.unit()));
            }
        }
        if (!open.isEmpty()) {
            out.cannotTell(
                    "what joins the two bus sockets of " + String.join(", ", open),
                    "unit off and unplugged, ohmmeter from H to H of its sockets: below 1 ohm when it is copper",
                    3 * open.size(),
                    open.toArray(new String[0]));
        }
    }

    /** A member all of whose leads are off in this state. */
    private static boolean pulledOnPurpose(Situation at, Buses buses, BusHub hub) {
        List<Integer> wires = HubPlugs.wires(at, buses, hub);
        return !wires.isEmpty()
                && wires.stream()
                        .noneMatch(w -> at.circuit().mated(at.wiring().wires().get(w)));
    }

    private static void look(Situation at, Outcomes out, Buses buses, String bus, List<BusHub> hubs) {
        Map<Integer, List<BusHub>> pieces = new LinkedHashMap<>();
        hubs.stream()
                .sorted(java.util.Comparator.comparing(buses::name))
                .forEach(hub -> pieces.computeIfAbsent(buses.segment(hub).index(), key -> new ArrayList<>())
                        .add(hub));
        if (pieces.size() > 1) {
            out.finding(new BusPieces(at, buses, bus, List.copyOf(pieces.values())).draft());
        } else if (UnknownLegs.of(at).none() && hubs.size() > 1) {
            out.looked();
        }
    }

    /** Names in the member list of a bus that no unit, or no bus port, answers to. */
    private static void listed(Situation at, Outcomes out, Bus bus, BitSet withPort) {
        if (bus.kind() instanceof Datum.Unknown) {
            out.cannotTell("kind of bus " + bus.name(), "look at its ports", 2, "bus " + bus.name());
            return;
        }
        if (!bus.kind().is(ringout.model.BusKind.CAN) && bus.kind().isKnown()) {
            return;
        }
        for (String member : bus.members()) {
            String name = member.contains(":") ? member.substring(0, member.indexOf(':')) : member;
            Optional<Integer> unit = at.directory().find(name);
            if (unit.isEmpty()) {
                List<String> known =
                        at.aircraft().units().stream().map(u -> u.ref()).toList();
                String hint = Nearest.hint(name, known);
                out.finding(ghost(
                        bus,
                        member,
                        "is not aboard",
                        "correct " + member + " among the members of bus " + bus.name()
                                + (hint.isEmpty() ? "" : ": " + hint)));
            } else if (at.circuit().aboard(unit.get()) && !withPort.get(unit.get())) {
                if (at.directory().typeKnown(unit.get())) {
                    out.finding(ghost(
                            bus,
                            member,
                            "has no port for it",
                            "take " + member + " off the members of bus " + bus.name()));
                } else {
                    out.cannotTell("bus port of " + name, "add its unit type to the library", 10, name);
                }
            }
        }
    }

    private static Draft ghost(Bus bus, String member, String fault, String fix) {
        return Draft.of(
                        Severity.S3,
                        "bus member missing: " + member + " is listed on bus " + bus.name() + " but " + fault)
                .about(member, "bus " + bus.name())
                .at(new ringout.finding.Place(bus.at(), bus.name(), "bus " + bus.name()))
                .sum(member + " among the members of " + bus.name() + ", no such port aboard")
                .why("listed by habit, or a slip of the pen: nothing can be said of it")
                .fix(fix)
                .cause("bus " + bus.name() + " lists " + member);
    }
}
