package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Assumed;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.SupplyTree;
import ringout.model.Datum;
import ringout.model.PartKind;
import ringout.model.UnitKind;

/**
 * A speed controller farther from its pack than its maker allows.
 *
 * <p>Why it matters: every cut of the current makes a surge in a long lead that the capacitors of the controller must take: they dry
 * out, and the controller fails in flight.
 *
 * <p>Formula: the length of the supply leads one way from the pack to the controller in mm, against the longest its maker allows. Each
 * 100 mm beyond needs 220 uF more at the controller.
 *
 * <p>Does not see: the return being longer than the supply, the quality of capacitors.
 *
 * <p>Reference: the limit is the maker's; the remedy is common practice, no source.
 */
@CheckInfo(
        code = "P32",
        name = "long-battery-lead",
        severity = Severity.S3,
        since = "0.1",
        needs = {"longest battery lead the maker allows", "length of each supply lead"})
public final class LongBatteryLead implements Sound {
    private static final double STEP_MM = 100;
    private static final String ALLOWED = "longest battery lead the maker allows";

    /** The conductors from the pack to a controller. */
    private record Way(List<Wire> wires, double mm) {}

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Gaps gaps = new Gaps();
        for (Consumer consumer : power.consumers()) {
            boolean controller = at.directory().type(consumer.unit()).kind().is(UnitKind.SPEED_CONTROLLER);
            if (controller && consumer.draws() && power.tree().reaches(consumer.plus())) {
                judge(at, out, gaps, consumer);
            }
        }
        gaps.tell(out, PowerData::way);
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, Consumer consumer) {
        Way way = way(at, consumer.plus());
        Datum<Double> allowed = at.directory().type(consumer.unit()).maxSupplyLeadMm();
        List<Wire> open =
                way.wires.stream().filter(wire -> !wire.lengthMm().isKnown()).toList();
        if (allowed.isNotApplicable() || way.wires.isEmpty()) {
            return;
        }
        double beyond = way.mm - allowed.or(0.0);
        double needed = at.limit(Thresholds.LEAD_CAPACITANCE).value() * beyond / STEP_MM;
        Datum<Double> extra = at.directory().unit(consumer.unit()).extraMicrofarad();
        if (!allowed.isKnown()) {
            gaps.add(ALLOWED, at.directory().name(consumer.unit()));
        } else if (beyond > 0 && extra instanceof Datum.Unknown) {
            gaps.add("capacitance added at the supply", at.directory().name(consumer.unit()));
        } else if (beyond > 0 && extra.or(0.0) < needed) {
            out.finding(draft(at, consumer, way, allowed, needed));
        } else if (open.isEmpty()) {
            out.looked();
        } else {
            open.forEach(wire -> gaps.add(PowerData.LENGTH, wire.lead().id()));
        }
    }

    private static Way way(Situation at, int plus) {
        SupplyTree tree = PowerGraph.of(at.circuit()).tree();
        List<Wire> wires = new ArrayList<>();
        double mm = 0;
        for (int v = plus; tree.edgeTo(v) >= 0 && !source(tree, v); v = tree.pointBefore(v)) {
            int edge = tree.edgeTo(v);
            if (at.wiring().kind(edge) == EdgeKind.CONDUCTOR) {
                Wire wire = at.wiring().wires().get(at.wiring().ref(edge));
                wires.add(0, wire);
                mm += wire.lengthMm().or(0.0);
            }
        }
        return new Way(List.copyOf(wires), mm);
    }

    private static boolean source(SupplyTree tree, int vertex) {
        return tree.partTo(vertex)
                .map(Part::origin)
                .filter(origin -> origin instanceof Part.Inner inner
                        && inner.part().kind().is(PartKind.SOURCE))
                .isPresent();
    }

    private static Draft draft(Situation at, Consumer consumer, Way way, Datum<Double> allowed, double needed) {
        String ref = at.directory().name(consumer.unit());
        double limit = allowed.or(0.0);
        Threshold step = at.limit(Thresholds.LEAD_CAPACITANCE);
        List<String> lengths = way.wires.stream()
                .map(wire -> wire.lead().id() + " " + Figures.of(wire.lengthMm().or(0.0)))
                .toList();
        Draft draft = Draft.of(
                        Severity.S3,
                        "battery lead too long: " + Figures.of(way.mm) + " mm to " + ref + ", its maker allows "
                                + Figures.of(limit) + " mm")
                .about(ref)
                .path(PowerGraph.of(at.circuit())
                        .tree()
                        .trailTo(consumer.plus())
                        .orElse(Trail.NONE))
                .sum(String.join(" + ", lengths) + " = " + Figures.of(way.mm) + " mm; " + Figures.of(way.mm - limit)
                        + " mm beyond x " + Figures.of(step.value()) + " uF per 100 mm = " + Figures.of(needed) + " uF")
                .judged(way.mm, limit, "mm", "limit of the maker")
                .input(allowed)
                .onAssumption(Assumed.turns(allowed, factor -> way.mm - limit * factor))
                .why("each cut of the current makes a surge in the lead that dries out the capacitors of " + ref)
                .meter("lay a tape along the leads from the pack to " + ref)
                .fix("fit " + Figures.of(needed) + " uF at the supply of " + ref + ", or shorten its leads");
        way.wires.forEach(wire -> draft.seen(wire.lead()));
        return draft.at(at.directory().unit(consumer.unit()), "supply lead");
    }
}
