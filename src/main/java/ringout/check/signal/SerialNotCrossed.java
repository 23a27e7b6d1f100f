package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.NamedFrom;
import ringout.model.PinRole;

/**
 * A serial lead that joins transmit to transmit, or receive to receive.
 *
 * <p>Why it matters: both units talk and neither hears; no meter and no light shows it.
 *
 * <p>Condition: two transmit pins of two units on one net, or two receive pins with no transmit on their net. A pin named from the
 * other unit's side ("RX = connect to RX") counts the other way round.
 *
 * <p>Does not see: a pin-out wrong in the library; two devices that listen to one transmitter, which is right.
 *
 * <p>Reference: common practice, no source (EIA/TIA-232 names a signal from the terminal's side, hence the peer-named pins).
 */
@CheckInfo(code = "S07", name = "serial-not-crossed", severity = Severity.S2, since = "0.1")
public final class SerialNotCrossed implements Check {
    private static final long SERIAL = NetRoles.bits(PinRole.SERIAL_OUT, PinRole.SERIAL_IN);

    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        Map<Integer, List<Wire>> wrong = new TreeMap<>();
        roles.each(SERIAL, net -> {
            List<Integer> pins = roles.pins(net, SERIAL);
            Leads.unknown(at, out, roles, net);
            List<String> named = pins.stream()
                    .filter(pin -> at.wiring().pin(pin).namedFrom() instanceof Datum.Unknown)
                    .map(at.wiring()::name)
                    .toList();
            if (!named.isEmpty()) {
                out.cannotTell(
                        "whose transmit the name means, of " + String.join(", ", named),
                        "power on, lead unplugged: a transmit pin idles at about 3.3 V",
                        3 * named.size(),
                        named.toArray(new String[0]));
            } else if (pins.size() > 1) {
                out.looked();
                boolean clash = sending(at, pins) > 1 || sending(at, pins) == 0;
                for (Wire wire : clash ? meeting(at, pins) : List.<Wire>of()) {
                    wrong.computeIfAbsent(wire.leadIndex(), lead -> new ArrayList<>())
                            .add(wire);
                }
            }
        });
        wrong.values().forEach(wires -> out.finding(draft(at, wires)));
    }

    private static long sending(Situation at, List<Integer> pins) {
        return pins.stream().filter(pin -> sends(at, pin)).count();
    }

    private static boolean sends(Situation at, int pin) {
        boolean out = at.wiring().is(pin, PinRole.SERIAL_OUT);
        return at.wiring().pin(pin).namedFrom().is(NamedFrom.PEER) != out;
    }

    /** The first conductor at each pin but the first: the ones that make equal pins meet. */
    private static List<Wire> meeting(Situation at, List<Integer> pins) {
        List<Wire> found = new ArrayList<>();
        for (int pin : pins.subList(1, pins.size())) {
            for (int w : at.wiring().wiresAt(pin)) {
                Wire wire = at.wiring().wires().get(w);
                if (at.circuit().mated(wire) && !found.contains(wire)) {
                    found.add(wire);
                    break;
                }
            }
        }
        return found;
    }

    private static Draft draft(Situation at, List<Wire> wires) {
        Wiring wiring = at.wiring();
        Wire first = wires.get(0);
        Lead lead = first.lead();
        String here = plug(wiring, first.fromPin());
        String there = plug(wiring, first.toPin());
        boolean grave = critical(at, first.fromPin()) && critical(at, first.toPin());
        List<String> meets = wires.stream()
                .map(wire -> wiring.name(wire.fromPin()) + " meets " + wiring.name(wire.toPin()))
                .toList();
        Draft draft = Draft.of(
                        grave ? Severity.S2 : Severity.S3,
                        "serial link not crossed: " + words(at, wires) + " in " + lead.id() + " between " + here
                                + " and " + there)
                .about(here, there)
                .at(lead)
                .path(at.circuit().trail(first.fromPin(), first.toPin()).orElse(Trail.NONE))
                .sum(String.join("; ", meets))
                .why("both units talk and neither hears")
                .meter("power on: about 3.3 V idle on one wire and nothing on the other; both idle high when crossed")
                .fix("cross transmit and receive in " + lead.id() + crossing(wiring, wires))
                .explains("S01", "S02", "S22", "T05", "T21");
        wires.forEach(wire -> draft.cause(wire.lead().id()));
        return draft;
    }

    private static String words(Situation at, List<Wire> wires) {
        boolean sends = wires.stream().anyMatch(wire -> sends(at, wire.fromPin()));
        boolean hears = wires.stream().anyMatch(wire -> !sends(at, wire.fromPin()));
        String transmit = "transmit on transmit";
        String receive = "receive on receive";
        return sends && hears ? transmit + ", " + receive : sends ? transmit : receive;
    }

    private static String crossing(Wiring wiring, List<Wire> wires) {
        if (wires.size() != 2) {
            return "";
        }
        String a = wiring.pin(wires.get(0).fromPin()).number();
        String b = wiring.pin(wires.get(1).fromPin()).number();
        String c = wiring.pin(wires.get(0).toPin()).number();
        String d = wiring.pin(wires.get(1).toPin()).number();
        return ": " + a + ">" + d + " " + b + ">" + c;
    }

    private static boolean critical(Situation at, int pin) {
        return at.flightCritical(at.wiring().directory().name(at.wiring().unitOf(pin)));
    }

    private static String plug(Wiring wiring, int pin) {
        return wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin));
    }
}
