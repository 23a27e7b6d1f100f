package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.EdgeKind;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.Walk;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Lead;
import ringout.model.PinRole;

/** Writes the finding that two sources meet: which, where, by which lead, and what else hangs on that rail. */
final class TwoSourcesDraft {
    /** A conductor on the way from the stronger to the weaker, and its pins in that direction. */
    private record Hop(Wire wire, int strongSide, int weakSide) {}

    private final Situation at;
    private final PowerSource strong;
    private final PowerSource weak;
    private final List<PowerSource> all;
    private final Trail way;
    private final List<Hop> meeting;

    private TwoSourcesDraft(Situation at, List<PowerSource> ordered) {
        this.at = at;
        all = ordered;
        strong = ordered.get(0);
        weak = ordered.get(ordered.size() - 1);
        Optional<Walk> walk = PowerGraph.of(at.circuit()).walk(strong.plus(), weak.plus());
        way = walk.map(w -> Trail.of(at.wiring(), w)).orElse(Trail.NONE);
        meeting = everyMeeting();
    }

    static Draft of(Situation at, Severity severity, int tie, List<PowerSource> ordered) {
        return new TwoSourcesDraft(at, ordered).draft(severity, tie);
    }

    /** Where each of the others meets the weakest, in their order. */
    private List<Hop> everyMeeting() {
        Set<Hop> hops = new LinkedHashSet<>();
        for (PowerSource source : all.subList(0, all.size() - 1)) {
            PowerGraph.of(at.circuit())
                    .walk(source.plus(), weak.plus())
                    .map(this::meeting)
                    .ifPresent(hops::addAll);
        }
        return List.copyOf(hops);
    }

    /** Conductors that feed no supply input: where two outputs meet. Without such, all on the way. */
    private List<Hop> meeting(Walk walk) {
        List<Hop> hops = new ArrayList<>();
        Wiring wiring = at.wiring();
        for (int i = 0; i < walk.edgeCount(); i++) {
            if (wiring.kind(walk.edge(i)) == EdgeKind.CONDUCTOR) {
                Wire wire = wiring.wires().get(wiring.ref(walk.edge(i)));
                boolean forwards = walk.vertex(i) == wire.fromEnd() || walk.vertex(i + 1) == wire.toEnd();
                hops.add(new Hop(
                        wire, forwards ? wire.fromPin() : wire.toPin(), forwards ? wire.toPin() : wire.fromPin()));
            }
        }
        List<Hop> clashing = hops.stream()
                .filter(hop -> !wiring.is(hop.strongSide(), PinRole.SUPPLY_IN)
                        && !wiring.is(hop.weakSide(), PinRole.SUPPLY_IN))
                .toList();
        return clashing.isEmpty() ? hops : clashing;
    }

    private Draft draft(Severity severity, int tie) {
        Threshold limit = at.limit(Thresholds.SOURCES_APART);
        OptionalDouble apart = TwoSources.apart(strong, weak);
        List<Lead> leads = Supplies.leads(meeting.stream().map(Hop::wire).toList());
        String ids = String.join(", ", leads.stream().map(Lead::id).toList());
        String weakName = face(weak, false);
        String strongName = all.size() == 2
                ? face(strong, true)
                : all.subList(0, all.size() - 1).stream()
                        .map(source -> Supplies.name(at, source))
                        .collect(Collectors.joining(", "));
        Draft draft = Draft.of(
                        severity,
                        (all.size() == 2 ? "two" : all.size()) + " sources on one net: " + strongName + " against "
                                + weakName + (ids.isEmpty() ? "" : ", joined by " + ids))
                .about(all.stream()
                        .map(s -> at.directory().name(s.unit()))
                        .distinct()
                        .toList())
                .path(way)
                .sum(apart(apart, limit) + over() + "; on this rail: " + String.join(", ", ports(tie)))
                .source(limit.source())
                .why("the stronger drives current into the weaker and lifts everything on its rail")
                .meter(meter(ids))
                .fix(fix(leads))
                .cause(TwoSources.token(at, all))
                .explains("P03", "P04", "P07", "P19", "P35", "T05");
        if (apart.isPresent()) {
            draft.judged(apart.getAsDouble(), limit.value(), "V", limit.source());
        }
        leads.forEach(draft::at);
        if (leads.isEmpty()) {
            Supplies.leadsAt(at, outputs()).forEach(draft::seen);
        }
        all.forEach(source -> draft.seen(at.directory().unit(source.unit())));
        return draft;
    }

    /** A source as the user meets it: the unit whose output pin it comes out of where the two meet. */
    private String face(PowerSource source, boolean strongSide) {
        if (meeting.size() == 1) {
            int pin = strongSide ? meeting.get(0).strongSide() : meeting.get(0).weakSide();
            int unit = at.wiring().unitOf(pin);
            if (unit != source.unit() && at.wiring().is(pin, PinRole.SUPPLY_OUT)) {
                return at.directory().name(unit) + " "
                        + Figures.of(source.volts().nominal()) + " V (from "
                        + at.directory().name(source.unit()) + ")";
            }
        }
        return Supplies.name(at, source);
    }

    private String apart(OptionalDouble apart, Threshold limit) {
        if (apart.isEmpty()) {
            return "what they give is not known, and equal nominal would not be equal voltage";
        }
        return Figures.of(strong.volts().nominal()) + " V - "
                + Figures.of(weak.volts().nominal()) + " V = "
                + Figures.of(apart.getAsDouble()) + " V apart, limit " + Figures.of(limit.value()) + " V; "
                + Supplies.range(strong.volts()) + " against " + Supplies.range(weak.volts());
    }

    /** What the stronger may give above what the output of the weaker stands. */
    private String over() {
        double stands = TwoSources.stands(at, weak);
        return strong.volts().high() > stands
                ? "; up to " + Figures.of(strong.volts().high()) + " V on an output of "
                        + at.directory().name(weak.unit()) + " that stands " + Figures.of(stands) + " V"
                : "";
    }

    /** The contacts the sources come out of. */
    private List<Integer> outputs() {
        List<Integer> pins = new ArrayList<>();
        for (PowerSource source : all) {
            for (int pin = at.wiring().firstPin(source.unit());
                    pin < at.wiring().endPin(source.unit());
                    pin++) {
                if (at.circuit().nets().same(pin, source.plus())) {
                    pins.add(pin);
                }
            }
        }
        return pins;
    }

    /** Every plug of the rail that gives or passes its supply. */
    private Set<String> ports(int tie) {
        Set<String> ports = new LinkedHashSet<>();
        Wiring wiring = at.wiring();
        PowerGraph power = PowerGraph.of(at.circuit());
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            boolean port = wiring.is(pin, PinRole.SUPPLY_OUT) || wiring.is(pin, PinRole.SUPPLY_THROUGH);
            if (port && power.ties().of(pin) == tie && at.circuit().aboard(wiring.unitOf(pin))) {
                ports.add(wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin)));
            }
        }
        return ports;
    }

    private String meter(String ids) {
        if (meeting.size() != 1) {
            return "power on, output of " + at.directory().name(weak.unit()) + " unplugged: its lead still shows "
                    + Figures.of(strong.volts().nominal()) + " V of "
                    + at.directory().name(strong.unit())
                    + ", 0 V when right";
        }
        String pin = at.wiring().name(meeting.get(0).weakSide());
        return "power on, " + ids + " out at " + pin + ": "
                + Figures.of(strong.volts().nominal()) + " V on the lead, "
                + Figures.of(weak.volts().nominal()) + " V in the plug";
    }

    /** Whether a lead has conductors besides the one supply. */
    private boolean hasMore(Lead lead) {
        return at.wiring().wires().stream()
                        .filter(wire -> wire.lead().equals(lead))
                        .count()
                > 1;
    }

    private String fix(List<Lead> leads) {
        boolean signals = leads.stream().allMatch(this::hasMore);
        if (leads.size() == 1 && !signals) {
            return "take " + leads.get(0).id() + " off";
        }
        if (leads.size() == 1 || (leads.size() == all.size() - 1 && signals)) {
            return "take the supply wire out of "
                    + String.join(", ", leads.stream().map(Lead::id).toList());
        }
        return "feed this net from one of "
                + String.join(", ", all.stream().map(s -> Supplies.name(at, s)).toList())
                + ", or join them by diodes";
    }
}
