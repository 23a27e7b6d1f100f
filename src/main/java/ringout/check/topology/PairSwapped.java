package ringout.check.topology;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Site;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.Polarity;
import ringout.model.Lead;

/**
 * A bus lead that joins H of one end to L of the other.
 *
 * <p>Why it matters: what lies behind it talks upside down; it is silent, and may hold the whole bus.
 *
 * <p>Condition: walking the bus from one end, a lead crosses H and L. S2 when units sit on both sides the wrong way round to
 * each other, or when H and L become one net; S4 on each of two crossed leads that cancel. Passive points that nobody named H
 * or L are taken the way round that needs the fewest crossed leads.
 *
 * <p>Does not see: a unit whose own pin-out is wrong in the library.
 *
 * <p>Reference: ISO 11898-2 (H and L); pair numbering: common practice, no source.
 */
@CheckInfo(
        code = "T12",
        name = "pair-swapped",
        severity = Severity.S2,
        since = "0.1",
        needs = {"role of each pin of the bus leads"})
public final class PairSwapped implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        UnknownLegs unknown = UnknownLegs.of(at);
        unknown.ask(out);
        Buses buses = Buses.of(at.circuit());
        Set<Integer> joined = new HashSet<>();
        for (BusSegment segment : buses.segments()) {
            if (segment.wired()) {
                if (unknown.none()) {
                    out.looked();
                }
                Polarity polarity = Polarity.of(buses, segment);
                boolean shorted = polarity.shorted();
                List<BusHub> reversed = shorted ? List.of() : polarity.reversed();
                for (BusLink link : polarity.crossed()) {
                    out.finding(draft(at, buses, link, reversed, shorted));
                }
                if (!shorted) {
                    segment.hubs()
                            .forEach(hub -> joined(at, out, buses, buses.hubs().get(hub), joined));
                }
            }
        }
    }

    private static Draft draft(Situation at, Buses buses, BusLink link, List<BusHub> reversed, boolean shorted) {
        Lead lead = link.lead();
        String a = buses.name(buses.hubs().get(link.from()));
        String b = buses.name(buses.hubs().get(link.to()));
        String bus = buses.name(buses.segment(buses.hubs().get(link.from())));
        boolean dead = shorted || !reversed.isEmpty();
        String who = reversed.stream().map(buses::name).distinct().sorted().collect(Collectors.joining(", "));
        Wiring wiring = at.wiring();
        List<String> meets = link.wires().stream()
                .map(wire -> wiring.name(wire.fromPin()) + " meets " + wiring.name(wire.toPin()))
                .toList();
        Draft draft = Draft.of(
                        dead ? Severity.S2 : Severity.S4,
                        "pair swapped: " + lead.id() + " crosses H and L between " + a + " and " + b + " on " + bus)
                .about(lead.id(), a, b)
                .path(trail(at, link.wires().get(0)))
                .sum(String.join("; ", meets))
                .source("ISO 11898-2")
                .why(why(shorted, who))
                .meter("pull both plugs of " + lead.id() + ": H of one end conducts to L of the other")
                .fix("cross back in " + lead.id() + ": " + straight(wiring, link))
                .explains("T05");
        link.leads().forEach(draft::at);
        return draft;
    }

    private static String why(boolean shorted, String who) {
        if (shorted) {
            return "the ring brings H and L together: the whole bus is silent";
        }
        return who.isEmpty()
                ? "two crossed leads cancel: the bus works until one of them is replaced"
                : "the wrong way round to the others: " + who;
    }

    private static String straight(Wiring wiring, BusLink link) {
        Wire first = link.wires().get(0);
        Wire second = link.wires().get(1);
        boolean rows = !(wiring.from(first.leadIndex()) instanceof Site.OnPlug)
                || !(wiring.to(first.leadIndex()) instanceof Site.OnPlug);
        if (rows) {
            return wiring.name(first.fromPin()) + " to " + wiring.name(second.toPin()) + ", "
                    + wiring.name(second.fromPin()) + " to " + wiring.name(first.toPin());
        }
        return wiring.pin(first.fromPin()).number() + ">"
                + wiring.pin(second.toPin()).number() + " "
                + wiring.pin(second.fromPin()).number() + ">"
                + wiring.pin(first.toPin()).number();
    }

    private static Trail trail(Situation at, Wire wire) {
        return at.circuit().trail(wire.fromPin(), wire.toPin()).orElse(Trail.NONE);
    }

    /** H and L of one port on one net, told once a net. */
    private static void joined(Situation at, Outcomes out, Buses buses, BusHub hub, Set<Integer> told) {
        if (hub.high() < 0 || hub.low() < 0 || !at.circuit().nets().same(hub.high(), hub.low())) {
            return;
        }
        if (told.add(at.circuit().nets().of(hub.high()))) {
            out.finding(shortDraft(at, buses, hub));
        }
    }

    private static Draft shortDraft(Situation at, Buses buses, BusHub hub) {
        Trail way = at.circuit().trail(hub.high(), hub.low()).orElse(Trail.NONE);
        String bus = buses.name(buses.segment(hub));
        String where = way.steps().stream()
                .filter(step -> step.kind() == Trail.Kind.LEAD)
                .map(Trail.Step::name)
                .distinct()
                .collect(Collectors.joining(", "));
        Draft draft = Draft.of(Severity.S2, "H and L joined: both legs of " + bus + " are one net through " + where)
                .about(bus)
                .path(way)
                .sum("H and L of " + buses.name(hub) + " are one net")
                .source("ISO 11898-2")
                .why("no unit can drive the bus: it is silent")
                .meter("power off, H to L at " + buses.name(hub) + ": about 0 ohm, 60 ohm when right")
                .fix("take H and L apart in " + where);
        at.aircraft().leads().stream()
                .filter(lead -> way.names().contains(lead.id()))
                .forEach(draft::at);
        return draft;
    }
}
