package ringout.check.signal;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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
import ringout.model.shape.Scalars;

/**
 * An output whose high level is above what an input stands, or below what it needs to read high.
 *
 * <p>Why it matters: above the absolute maximum the input burns, at once or after weeks; below the threshold it never reads high,
 * or only when warm.
 *
 * <p>Formula: high level of the output in V against the absolute maximum (S1) and the high threshold (S3) of every input of another
 * unit on the net.
 *
 * <p>Does not see: an input that stands 5 V only while its unit is powered (P08); analog levels.
 *
 * <p>Reference: maker's data of the input; TTL and CMOS thresholds as in JEDEC JESD8.
 */
@CheckInfo(
        code = "S03",
        name = "wrong-level",
        severity = Severity.S1,
        since = "0.1",
        needs = {"voltage of a driven high level", "absolute maximum of each input"})
public final class WrongLevel implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        Set<String> open = new TreeSet<>();
        roles.each(NetRoles.DRIVERS, net -> {
            if (roles.any(net, NetRoles.RECEIVERS)) {
                List<Integer> receivers = roles.pins(net, NetRoles.RECEIVERS);
                for (int driver : roles.pins(net, NetRoles.DRIVERS)) {
                    receivers.forEach(receiver -> look(at, out, driver, receiver, open));
                }
            }
        });
        if (!open.isEmpty()) {
            out.cannotTell(
                    "signal level of " + String.join(", ", open),
                    "look it up in the maker's data",
                    5,
                    open.toArray(new String[0]));
        }
    }

    private static void look(Situation at, Outcomes out, int driver, int receiver, Set<String> open) {
        Wiring wiring = at.wiring();
        if (wiring.unitOf(driver) == wiring.unitOf(receiver)) {
            return;
        }
        Datum<Double> high = wiring.pin(driver).highV();
        Datum<Double> most = wiring.pin(receiver).maxV();
        Datum<Double> least = wiring.pin(receiver).thresholdV();
        if (high.isMissing()) {
            open.add(wiring.name(driver));
        }
        if (most.isMissing() || least instanceof Datum.Unknown) {
            open.add(wiring.name(receiver));
        }
        if (!high.isKnown()) {
            return;
        }
        out.looked();
        if (most.isKnown() && high.or(0.0) > most.or(0.0)) {
            out.finding(draft(at, driver, receiver, most, Severity.S1));
        } else if (least.isKnown() && high.or(0.0) < least.or(0.0)) {
            out.finding(draft(at, driver, receiver, least, Severity.S3));
        }
    }

    private static Draft draft(Situation at, int driver, int receiver, Datum<Double> limit, Severity severity) {
        Wiring wiring = at.wiring();
        String from = wiring.name(driver);
        String to = wiring.name(receiver);
        Datum<Double> high = wiring.pin(driver).highV();
        String volts = Scalars.number(high.or(0.0)) + " V";
        String bound = Scalars.number(limit.or(0.0)) + " V";
        boolean burns = severity == Severity.S1;
        Trail way = at.circuit().trail(driver, receiver).orElse(Trail.NONE);
        Draft draft = Draft.of(
                        severity,
                        (burns ? "too high a level: " : "too low a level: ") + from + " drives " + volts + " into " + to
                                + (burns ? ", which stands " : ", which needs ") + bound)
                .about(from, to)
                .path(way)
                .sum(volts + (burns ? " above the maximum of " : " below the threshold of ") + bound)
                .judged(
                        high.or(0.0),
                        limit.or(0.0),
                        "V",
                        "data of " + wiring.unit(receiver).type())
                .input(high)
                .input(limit)
                .why(
                        burns
                                ? "the input burns, at once or after weeks"
                                : "the input never reads high, or only when warm")
                .meter("unit on, " + from + " high and " + to + " unplugged: " + volts + " at the lead")
                .fix("put a level shifter between " + from + " and " + to + ", or fit a type with matching levels")
                .seen(wiring.unit(driver))
                .seen(wiring.unit(receiver))
                .cause(wiring.unit(driver).ref() + "/type");
        Leads.along(at, way).forEach(draft::at);
        return draft;
    }
}
