package ringout.check.signal;

import java.util.ArrayList;
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
import ringout.model.Datum;
import ringout.model.Drive;

/**
 * Two push-pull outputs on one net.
 *
 * <p>Why it matters: they fight; the line sits between levels and both outputs heat.
 *
 * <p>Condition: at least two driving pins on a net that are push-pull. An output without a drive on record counts as push-pull, as
 * outputs of boxes are; open-drain, half-duplex and bus transceivers may share a net.
 *
 * <p>Does not see: outputs that a setting switches off.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "S01",
        name = "two-drivers",
        severity = Severity.S2,
        since = "0.1",
        needs = {"drive of each output"})
public final class TwoDrivers implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        roles.each(NetRoles.DRIVERS, net -> {
            if (roles.drivers(net) > 1) {
                look(at, out, roles.pins(net, NetRoles.DRIVERS));
            } else if (!Leads.unknown(at, out, roles, net)) {
                out.looked();
            }
        });
    }

    private static void look(Situation at, Outcomes out, List<Integer> drivers) {
        Wiring wiring = at.wiring();
        List<Integer> pushing = new ArrayList<>();
        for (int pin : drivers) {
            String name = wiring.name(pin);
            if (wiring.pin(pin).namedFrom() instanceof Datum.Unknown) {
                out.cannotTell("whose transmit the name of " + name + " means", "look it up in the pin-out", 3, name);
                return;
            }
            if (wiring.pin(pin).drive() instanceof Datum.Unknown) {
                out.cannotTell("drive of output " + name, "look it up in the maker's data", 5, name);
                return;
            }
            if (wiring.pin(pin).drive().or(Drive.PUSH_PULL) == Drive.PUSH_PULL) {
                pushing.add(pin);
            }
        }
        out.looked();
        if (pushing.size() > 1) {
            out.finding(draft(at, pushing));
        }
    }

    private static Draft draft(Situation at, List<Integer> pins) {
        List<String> names = pins.stream().map(at.wiring()::name).toList();
        Trail way = at.circuit().trail(pins.get(0), pins.get(1)).orElse(Trail.NONE);
        Draft draft = Draft.of(
                        Severity.S2, "two outputs on one wire: " + String.join(" and ", names) + " drive each other")
                .about(names)
                .path(way)
                .sum(pins.size() + " push-pull outputs on one net, one is right")
                .why("the line sits between levels and both outputs heat")
                .meter(
                        "power on: volts on the line with all plugs mated, then with the plug of each output pulled in turn; one that"
                                + " is no output leaves the line as it was")
                .fix("leave only one of " + String.join(", ", names) + " on the net");
        Leads.along(at, way).forEach(draft::at);
        return draft;
    }
}
