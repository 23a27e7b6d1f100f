package ringout.check.signal;

import java.util.Comparator;
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
import ringout.model.PinRole;

/**
 * An output tied to 0V or to a rail.
 *
 * <p>Why it matters: the output is shorted; it heats, and everything on its net stays at one level.
 *
 * <p>Condition: a net with a driving pin also holds a 0V pin or a supply pin.
 *
 * <p>Does not see: an output tied through a part.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(code = "S06", name = "output-tied", severity = Severity.S2, since = "0.1")
public final class OutputTied implements Check {
    private static final long TIES = NetRoles.SUPPLIES | NetRoles.bits(PinRole.ZERO_V, PinRole.PACK_MINUS);

    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        roles.each(NetRoles.DRIVERS, net -> {
            if (!Leads.unknown(at, out, roles, net)) {
                out.looked();
            }
            if (roles.any(net, TIES)) {
                out.finding(draft(at, roles.pins(net, NetRoles.DRIVERS), roles.pins(net, TIES)));
            }
        });
    }

    private static Draft draft(Situation at, List<Integer> outputs, List<Integer> ties) {
        Wiring wiring = at.wiring();
        List<String> names = outputs.stream().map(wiring::name).toList();
        int tie = nearest(at, outputs.get(0), ties);
        Trail way = at.circuit().trail(outputs.get(0), tie).orElse(Trail.NONE);
        boolean zero = wiring.is(tie, PinRole.ZERO_V) || wiring.is(tie, PinRole.PACK_MINUS);
        Draft draft = Draft.of(
                        Severity.S2,
                        "output tied: " + String.join(", ", names) + (outputs.size() == 1 ? " is" : " are")
                                + " tied to " + (zero ? "0V" : "the rail") + " at " + wiring.name(tie))
                .about(names)
                .about(wiring.name(tie))
                .path(way)
                .sum("an output shares its net with " + wiring.name(tie))
                .why("the output is shorted and the signal never moves")
                .meter("power off: under 1 ohm from " + names.get(0) + " to " + wiring.name(tie) + ", open when right")
                .fix("move the conductor between " + names.get(0) + " and " + wiring.name(tie)
                        + " to the pin it belongs to");
        Leads.along(at, way).forEach(draft::at);
        return draft;
    }

    private static int nearest(Situation at, int output, List<Integer> ties) {
        List<Integer> sorted =
                ties.stream().sorted(Comparator.comparing(at.wiring()::name)).toList();
        int best = sorted.get(0);
        int fewest = Integer.MAX_VALUE;
        for (int tie : sorted.subList(0, Math.min(20, sorted.size()))) {
            int steps = at.circuit()
                    .trail(output, tie)
                    .map(way -> way.steps().size())
                    .orElse(Integer.MAX_VALUE);
            if (steps < fewest) {
                fewest = steps;
                best = tie;
            }
        }
        return best;
    }
}
