package ringout.check.topology;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.finding.Sketch;
import ringout.graph.Site;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.model.Lead;

/**
 * A bus lead with only one of H and L, or H and L in two different leads.
 *
 * <p>Why it matters: a single leg may seem to work on a short bus with common 0V, and fails with noise or length; legs that run
 * apart pick up what a pair cancels.
 *
 * <p>Condition: between two places of a bus only one leg is joined, or each leg by another lead. In a list with one row a
 * conductor, rows between the same two plugs are one lead.
 *
 * <p>Does not see: a broken conductor that the list shows as whole.
 *
 * <p>Reference: ISO 11898-2 (differential pair); DroneCAN specification, section 8 (twisted pair).
 */
@CheckInfo(
        code = "T13",
        name = "half-pair",
        severity = Severity.S2,
        since = "0.1",
        needs = {"role of each pin of the bus leads"})
public final class HalfPair implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        UnknownLegs unknown = UnknownLegs.of(at);
        unknown.ask(out);
        Buses buses = Buses.of(at.circuit());
        for (BusLink link : buses.links()) {
            if (unknown.none()) {
                out.looked();
            }
            if (!link.pair()) {
                out.finding(half(at, buses, link));
            } else if (link.legs() == BusLink.Legs.SPLIT && apart(at, link)) {
                out.finding(split(at, buses, link));
            }
        }
    }

    /** Whether the legs run in two made-up leads, not in two rows of one. */
    private static boolean apart(Situation at, BusLink link) {
        return link.wires().stream()
                .allMatch(wire -> at.wiring().from(wire.leadIndex()) instanceof Site.OnPlug
                        && at.wiring().to(wire.leadIndex()) instanceof Site.OnPlug);
    }

    private static Draft half(Situation at, Buses buses, BusLink link) {
        Wiring wiring = at.wiring();
        Wire wire = link.wires().get(0);
        Lead lead = link.lead();
        BusHub from = buses.hubs().get(link.from());
        BusHub to = buses.hubs().get(link.to());
        boolean high = link.legs() == BusLink.Legs.HIGH_ONLY;
        String has = high ? "H" : "L";
        String lacks = high ? "L" : "H";
        String crossing = link.crossed() ? ", and crosses it" : "";
        String places = buses.name(from) + " and " + buses.name(to);
        Draft draft = Draft.of(
                        Severity.S2,
                        "half a pair: " + lead.id() + " joins only " + has + " between " + places + crossing)
                .about(lead.id(), buses.name(from), buses.name(to))
                .at(lead)
                .path(at.circuit().trail(wire.fromPin(), wire.toPin()).orElse(Trail.NONE))
                .sum("1 of 2 legs: " + wiring.name(wire.fromPin()) + " meets " + wiring.name(wire.toPin()) + ", no "
                        + lacks)
                .source("ISO 11898-2")
                .why("may seem to work on a short bus with common 0V; fails with noise, length or another unit")
                .meter("pull both plugs of " + lead.id() + ": " + has + " conducts end to end, " + lacks + " is open")
                .fix("fit the missing " + lacks + " conductor in " + lead.id())
                .sketch(new Sketch.Missing(
                        Sketch.What.WIRE,
                        wiring.plugName(wiring.unitOf(wire.fromPin()), wiring.plugIndex(wire.fromPin())),
                        wiring.plugName(wiring.unitOf(wire.toPin()), wiring.plugIndex(wire.toPin()))))
                .explains("T02", "T04", "T06", "T07", "T08", "T17", "T21", "S22");
        for (BusSegment segment : List.of(buses.segment(from), buses.segment(to))) {
            draft.cause(Termination.cause(buses, segment));
        }
        return draft;
    }

    private static Draft split(Situation at, Buses buses, BusLink link) {
        Wiring wiring = at.wiring();
        List<Lead> leads = link.leads();
        String ids = leads.get(0).id() + " and " + leads.get(1).id();
        String a = buses.name(buses.hubs().get(link.from()));
        String b = buses.name(buses.hubs().get(link.to()));
        Draft draft = Draft.of(
                        Severity.S2,
                        "legs of a pair in two leads: H and L between " + a + " and " + b + " run in " + ids)
                .about(leads.get(0).id(), leads.get(1).id(), a, b)
                .path(at.circuit()
                        .trail(
                                link.wires().get(0).fromPin(),
                                link.wires().get(0).toPin())
                        .orElse(Trail.NONE))
                .sum(String.join(
                        "; ",
                        link.wires().stream()
                                .map(wire -> wire.lead().id() + " " + wiring.name(wire.fromPin()) + " to "
                                        + wiring.name(wire.toPin()))
                                .toList()))
                .source("DroneCAN specification, section 8")
                .why("works on the bench and fails beside power leads: the loop between the legs picks up noise")
                .fix("run H and L as one twisted pair in one lead")
                .explains("T10", "T14", "T19");
        leads.forEach(draft::at);
        return draft;
    }
}
