package ringout.check.signal;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wiring;
import ringout.graph.signal.NetRoles;
import ringout.graph.signal.References;
import ringout.model.PinRole;
import ringout.model.Unit;

/**
 * Two units joined by a single-ended signal without a common 0V.
 *
 * <p>Why it matters: the signal has nothing to be measured against; it floats, or the return finds a way through something else.
 *
 * <p>Condition: the 0V point of the driving unit and that of a listening unit are not joined by conductors, links, fuses, closed
 * switches or sense resistors. Differential pairs need no common 0V here.
 *
 * <p>Does not see: a link isolated inside a unit, unless its isolated 0V is a point of its own in the type.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "S04",
        name = "no-common-reference",
        severity = Severity.S2,
        since = "0.1",
        needs = {"0V pins of both units"})
public final class NoCommonReference implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        References references = References.of(at.circuit());
        roles.each(NetRoles.DRIVERS, net -> {
            if (roles.any(net, NetRoles.RECEIVERS)) {
                int driver = roles.pins(net, NetRoles.DRIVERS).get(0);
                for (int receiver : roles.pins(net, NetRoles.RECEIVERS)) {
                    look(at, out, references, driver, receiver);
                }
            }
        });
        roles.each(NetRoles.bits(PinRole.SDA), net -> {
            List<Integer> pins = roles.pins(net, NetRoles.bits(PinRole.SDA));
            for (int pin : pins.subList(1, pins.size())) {
                look(at, out, references, pins.get(0), pin);
            }
        });
    }

    private static void look(Situation at, Outcomes out, References references, int a, int b) {
        Wiring wiring = at.wiring();
        if (wiring.unitOf(a) == wiring.unitOf(b)) {
            return;
        }
        int zeroA = references.zeroPin(a);
        int zeroB = references.zeroPin(b);
        if (zeroA < 0 || zeroB < 0) {
            String bare = wiring.unit(zeroA < 0 ? a : b).ref();
            out.cannotTell("0V pin of " + bare, "look it up in the maker's pin-out", 5, bare);
            return;
        }
        out.looked();
        if (!references.same(zeroA, zeroB)) {
            out.finding(draft(at, a, b, zeroA, zeroB));
        }
    }

    private static Draft draft(Situation at, int a, int b, int zeroA, int zeroB) {
        Wiring wiring = at.wiring();
        Unit from = wiring.unit(a);
        Unit to = wiring.unit(b);
        Trail way = at.circuit().trail(a, b).orElse(Trail.NONE);
        Draft draft = Draft.of(
                        Severity.S2,
                        "no common reference: signal " + wiring.name(a) + " to " + wiring.name(b) + ", but "
                                + from.ref() + " and " + to.ref() + " share no 0V")
                .about(from.ref(), to.ref())
                .path(way)
                .sum("no way over 0V from " + wiring.name(zeroA) + " to " + wiring.name(zeroB))
                .why("the signal has nothing to be measured against; a return current may take another way")
                .meter("power off: open from " + wiring.name(zeroA) + " to " + wiring.name(zeroB)
                        + ", under 1 ohm when right")
                .fix("join " + wiring.name(zeroA) + " and " + wiring.name(zeroB) + " by a 0V conductor")
                .cause(from.ref() + "/0V")
                .cause(to.ref() + "/0V")
                .explains("S05");
        Leads.along(at, way).forEach(draft::seen);
        return draft;
    }
}
