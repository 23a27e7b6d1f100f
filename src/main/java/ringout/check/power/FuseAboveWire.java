package ringout.check.power;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Assumed;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Weighing;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.Protection;
import ringout.graph.wire.Ampacity;
import ringout.model.Datum;
import ringout.solve.rating.Protector;
import ringout.solve.rating.WireRules;

/**
 * A fuse that lets more through than a conductor behind it carries.
 *
 * <p>Why it matters: on a short the wire burns and the fuse stays whole. A thin branch tapped off behind a fuse is the usual way.
 *
 * <p>Condition: the rating of the fuse in A is above what the rule set of the project allows for a conductor of the supply behind it,
 * all the way to the load or the next regulator. Short-lead practice: the current of the conductor in free air with its factors.
 * Aircraft chart: the fuse column.
 *
 * <p>Does not see: returns (P10, P14), fuses that open late, conductors inside a unit.
 *
 * <p>Reference: FAA AC 43.13-1B, chapter 11: the protector must open before the wire rating is exceeded; table 11-3. Free air:
 * common practice, no source.
 */
@CheckInfo(
        code = "P22",
        name = "fuse-above-wire",
        severity = Severity.S2,
        since = "0.1",
        needs = {"fuse rating", "wire size", "loaded wires in the bundle"})
public final class FuseAboveWire implements Weighing {
    /** A fuse and the conductors behind it that it does not protect, all their other fuses too large as well. */
    private record Group(Set<Part> fuses, List<Wire> wires) {}

    @Override
    public void look(Situation at, Outcomes out) {
        Protection protection = Protection.of(at.circuit());
        WireRules rules = WireRules.of(at.aircraft());
        Gaps gaps = new Gaps();
        Map<Integer, Group> groups = new LinkedHashMap<>();
        boolean held = false;
        for (Protection.Fed fed : protection.fed()) {
            if (fed.wire().lead().fuseA() instanceof Datum.Unknown) {
                gaps.add(PowerData.FUSE, fed.wire().lead().id());
            }
            List<Part> fuses = protection.fusesBefore(
                    fed.end(), PowerGraph.of(at.circuit()).tree());
            List<Part> above = fuses.stream()
                    .filter(fuse -> above(protection, rules, fuse, fed.wire()))
                    .toList();
            if (above.isEmpty()) {
                held |= !fuses.isEmpty() && holds(at, gaps, protection, rules, fuses, fed.wire());
            } else {
                Group group = groups.computeIfAbsent(
                        above.get(above.size() - 1).index(),
                        key -> new Group(new LinkedHashSet<>(), new ArrayList<>()));
                group.fuses.addAll(above);
                group.wires.add(fed.wire());
            }
        }
        groups.values().forEach(group -> out.finding(draft(at, protection, rules, group)));
        if (held) {
            out.looked();
        }
        gaps.tell(out, PowerData::way);
    }

    private static boolean above(Protection protection, WireRules rules, Part fuse, Wire wire) {
        Datum<Double> rating = protection.rating(fuse);
        return rating.isKnown()
                && rating.or(0.0) > rules.protector(wire, Protector.FUSE).high();
    }

    /** Whether every fuse surely protects a conductor; if not, what is missing is noted. */
    private static boolean holds(
            Situation at, Gaps gaps, Protection protection, WireRules rules, List<Part> fuses, Wire wire) {
        double low = rules.protector(wire, Protector.FUSE).low();
        boolean holds = true;
        for (Part fuse : fuses) {
            Datum<Double> rating = protection.rating(fuse);
            if (!rating.isKnown()) {
                gaps.add(PowerData.FUSE, FuseRows.where(at, fuse));
                holds = false;
            } else if (rating.or(0.0) > low) {
                gaps.add(rules.missing(wire, Protector.FUSE));
                holds = false;
            }
        }
        return holds;
    }

    private static Draft draft(Situation at, Protection protection, WireRules rules, Group group) {
        List<Part> fuses = group.fuses.stream()
                .sorted(Comparator.comparing(
                        (Part fuse) -> -protection.rating(fuse).or(0.0)))
                .toList();
        Wire thin = group.wires.get(0);
        for (Wire wire : group.wires) {
            thin = allowed(rules, wire) <= allowed(rules, thin) ? wire : thin;
        }
        Wire thinnest = thin;
        Datum<Double> rating = protection.rating(fuses.get(0));
        double limit = allowed(rules, thinnest);
        String wires =
                group.wires.stream().map(wire -> wire.lead().id()).distinct().collect(Collectors.joining(", "));
        String all = fuses.stream().map(fuse -> FuseRows.words(at, fuse)).collect(Collectors.joining(" and "));
        Draft draft = Draft.of(
                        Severity.S2,
                        "fuse above wire: " + all + ", but " + thinnest.lead().id() + " behind it allows "
                                + Figures.of(limit) + " A")
                .about(fuses.stream().map(fuse -> FuseRows.where(at, fuse)).toList())
                .about(group.wires.stream()
                        .map(wire -> wire.lead().id())
                        .distinct()
                        .toList())
                .path(PowerGraph.of(at.circuit())
                        .tree()
                        .trailTo(thinnest.toPin())
                        .orElse(Trail.NONE))
                .sum(all + "; " + thinnest.lead().id() + " " + rules.words(thinnest) + " " + Figures.of(limit) + " A"
                        + other(rules, rating, thinnest))
                .judged(rating.or(0.0), limit, "A", rules.protectorSource())
                .input(rating)
                .input(thinnest.awg())
                .onAssumption(Assumed.turns(rating, factor -> rating.or(0.0) * factor - limit)
                        || Assumed.turns(thinnest.awg(), factor -> rating.or(0.0) - limit * factor))
                .why("on a short behind it the wire burns and the fuse stays whole")
                .meter("read the rating on the fuse and the print on " + wires)
                .fix("fit at most " + Figures.of(limit) + " A, or make " + wires + " thick enough for "
                        + Figures.of(rating.or(0.0)) + " A")
                .explains("P11", "P13", "P14", "P15", "P16", "P17", "P24", "P25");
        fuses.forEach(fuse -> FuseRows.at(at, draft, fuse));
        group.wires.stream().map(Wire::lead).distinct().forEach(draft::at);
        return draft;
    }

    private static double allowed(WireRules rules, Wire wire) {
        return rules.protector(wire, Protector.FUSE).high();
    }

    private static String other(WireRules rules, Datum<Double> rating, Wire wire) {
        WireRules other = rules.other();
        Ampacity band = other.protector(wire, Protector.FUSE);
        if (!band.isKnown()) {
            return "";
        }
        String verdict = rating.or(0.0) > band.high() ? "fails" : "passes";
        return "; by " + other.title() + " " + Figures.of(band.high()) + " A: " + verdict;
    }
}
