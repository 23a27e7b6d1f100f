package ringout.check.signal;

import java.util.LinkedHashSet;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.graph.signal.NetRoles;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * An input that is wired, or must be driven, with no output on its net.
 *
 * <p>Why it matters: an open input reads anything; a motor input without a driver stays dead or twitches.
 *
 * <p>Condition: a listening pin with a mated conductor, or marked as needed, whose net has no driving pin. S2 when it is a motor
 * or servo input or belongs to a function flight depends on, else S3.
 *
 * <p>Does not see: an output that never sends.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "S02",
        name = "no-driver",
        severity = Severity.S2,
        since = "0.1",
        needs = {"role of every pin on the net"})
public final class NoDriver implements Check {
    private static final long OPEN = NetRoles.RECEIVERS | NetRoles.bits(PinRole.PASSIVE);

    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        roles.each(NetRoles.RECEIVERS, net -> {
            if (roles.any(net, NetRoles.DRIVERS)) {
                out.looked();
                return;
            }
            if (!Leads.unknown(at, out, roles, net)) {
                roles.pins(net, NetRoles.RECEIVERS).forEach(pin -> look(at, out, pin));
            }
        });
    }

    private static void look(Situation at, Outcomes out, int pin) {
        boolean wired = Leads.wired(at, pin);
        boolean needed = at.wiring().pin(pin).needed().or(false) && at.circuit().mated(pin);
        if (wired || needed) {
            out.finding(draft(at, pin, wired));
        }
    }

    private static Draft draft(Situation at, int pin, boolean wired) {
        Wiring wiring = at.wiring();
        String name = wiring.name(pin);
        String unit = wiring.unit(pin).ref();
        boolean grave = wiring.is(pin, PinRole.PULSE_IN) || at.flightCritical(unit);
        Draft draft = Draft.of(
                        grave ? Severity.S2 : Severity.S3,
                        "no driver: input " + name
                                + (wired ? " is wired, but no output drives it" : " must be driven and is open"))
                .about(name)
                .sum("0 outputs on the net of " + name + ", one is right")
                .why("an open input reads anything")
                .meter("power off: ring out from " + name
                        + " to every output that may drive it; with a way under 1 ohm the list"
                        + " is wrong, not the aircraft")
                .fix("bring an output to " + name)
                .cause(wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin)) + " open")
                .seen(wiring.unit(pin));
        for (int w : wiring.wiresAt(pin)) {
            draft.at(wiring.wires().get(w).lead());
        }
        lacking(at, draft, pin).forEach(draft::at);
        return draft;
    }

    /** Leads at a plug of the net that bring no conductor to its contact there; a plug without any is noted as open. */
    private static Set<Lead> lacking(Situation at, Draft draft, int pin) {
        Set<Lead> found = new LinkedHashSet<>();
        for (int member : NetRoles.of(at.circuit()).pins(at.circuit().nets().of(pin), OPEN)) {
            if (at.wiring().wiresAt(member).length == 0) {
                int unit = at.wiring().unitOf(member);
                int plug = at.wiring().plugIndex(member);
                int before = found.size();
                for (int other = at.wiring().firstPin(unit, plug);
                        other < at.wiring().endPin(unit, plug);
                        other++) {
                    for (int w : at.wiring().wiresAt(other)) {
                        found.add(at.wiring().wires().get(w).lead());
                    }
                }
                if (found.size() == before) {
                    draft.cause(at.wiring().plugName(unit, plug) + " open");
                }
            }
        }
        return found;
    }
}
