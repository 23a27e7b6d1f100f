package ringout.check.topology;

import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.signal.NetRoles;
import ringout.model.PinRole;

/**
 * A lead that joins pins whose roles may not meet: bus on serial, serial on I2C, pulse on bus, video on serial, supply on a
 * signal.
 *
 * <p>Why it matters: plugs of one family fit many sockets; at best the unit is silent, at worst a supply burns an input.
 *
 * <p>Condition: two pins on one net whose roles may not meet. S1 when one of them brings a supply and the other is a signal, else
 * S2. A sense or logic input may sit on a rail when its highest voltage is at least that of the rail; a motor or servo
 * output may drive a logic input when its function is set to something else than a motor.
 *
 * <p>Does not see: H on L (T12), supply on 0V (P02), transmit on transmit (S07), two outputs (S01), the right kind of port set to the
 * wrong protocol (A09).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "T05",
        name = "wrong-port",
        severity = Severity.S2,
        since = "0.1",
        needs = {
            "role of each pin",
            "function of an output that drives a logic input",
            "highest voltage of an input on a rail"
        })
public final class WrongPort implements Check {
    private static final int NAMED = 6;

    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        Clashes clashes = new Clashes(at);
        BitSet done = new BitSet();
        TreeSet<String> unknown = new TreeSet<>();
        for (Wire wire : at.wiring().wires()) {
            int net = at.circuit().nets().of(wire.fromPin());
            if (!done.get(net) && at.circuit().mated(wire)) {
                done.set(net);
                if (roles.unknown(net)) {
                    unknown(at, net, unknown);
                } else {
                    out.looked();
                }
                if (!RolesThatMeet.agree(roles.set(net))) {
                    clashes.add(net);
                }
            }
        }
        ask(out, unknown);
        Map<String, List<Clashes.Meeting>> byPlugs = new TreeMap<>(clashes.byPlugs());
        byPlugs.values().forEach(meetings -> out.finding(draft(at, meetings)));
        clashes.open().forEach(open -> out.cannotTell(open.datum(), open.how(), open.minutes(), open.pin()));
    }

    private static void unknown(Situation at, int net, Set<String> found) {
        for (int pin : at.circuit().nets().pins(net)) {
            int unit = at.wiring().unitOf(pin);
            if (at.wiring().role(pin).isEmpty() && at.circuit().aboard(unit)) {
                found.add(
                        at.directory().typeKnown(unit)
                                ? at.wiring().plugName(unit, at.wiring().plugIndex(pin))
                                : "unit type " + at.directory().unit(unit).type());
            }
        }
    }

    private static void ask(Outcomes out, Set<String> unknown) {
        if (!unknown.isEmpty()) {
            List<String> first = unknown.stream().limit(NAMED).toList();
            String more = unknown.size() > NAMED ? " and " + (unknown.size() - NAMED) + " more" : "";
            out.cannotTell(
                    "role of the pins of " + String.join(", ", first) + more,
                    "look it up in the maker's pin-out, or in the configuration when the port has several uses",
                    5 * unknown.size(),
                    unknown.toArray(new String[0]));
        }
    }

    private static Draft draft(Situation at, List<Clashes.Meeting> meetings) {
        Wiring wiring = at.wiring();
        Clashes.Meeting first = meetings.get(0);
        boolean burns = meetings.stream().anyMatch(meeting -> meeting.burns(wiring));
        String a = plug(wiring, first.one());
        String b = plug(wiring, first.other());
        String meets = String.join(
                ", ",
                meetings.stream()
                        .map(meeting -> word(wiring, meeting.one()) + " meets " + word(wiring, meeting.other()))
                        .distinct()
                        .toList());
        String ids = String.join(
                ", ",
                meetings.stream()
                        .map(meeting -> meeting.wire().lead().id())
                        .distinct()
                        .toList());
        BetterSocket better = BetterSocket.of(at, first.wire());
        Draft draft = Draft.of(
                        burns ? Severity.S1 : Severity.S2,
                        (burns ? "supply on a signal: " : "wrong port: ") + ids + " joins " + a + " to " + b + ": "
                                + meets)
                .about(ids, a, b)
                .path(at.circuit().trail(first.one(), first.other()).orElse(Trail.NONE))
                .sum(String.join(
                        "; ",
                        meetings.stream()
                                .map(meeting -> wiring.name(meeting.one()) + " (" + word(wiring, meeting.one())
                                        + ") on " + wiring.name(meeting.other()) + " (" + word(wiring, meeting.other())
                                        + ")" + (meeting.note().isEmpty() ? "" : ": " + meeting.note()))
                                .toList()))
                .why(
                        burns
                                ? "the input burns the moment power is applied, and may take the unit with it"
                                : "neither side understands the other, and outputs may work against each other")
                .meter("power off, " + wiring.name(first.one()) + " to " + wiring.name(first.other())
                        + ": below 1 ohm now, open when right")
                .fix(better.words(ids))
                .explains(
                        "P04", "P06", "S01", "S02", "S03", "S06", "S07", "S20", "S22", "T02", "T04", "T06", "T13",
                        "T21");
        meetings.forEach(meeting -> draft.at(meeting.wire().lead()));
        better.causes(at).forEach(draft::cause);
        return draft;
    }

    private static String plug(Wiring wiring, int pin) {
        return wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin));
    }

    private static String word(Wiring wiring, int pin) {
        return wiring.role(pin).map(PinRole::word).orElse("?");
    }
}
