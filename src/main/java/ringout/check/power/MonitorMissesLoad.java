package ringout.check.power;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Lead;
import ringout.model.PartKind;
import ringout.model.UnitKind;

/**
 * A load whose current the current monitors do not see.
 *
 * <p>Why it matters: the charge counted is less than the charge used; the pack is empty before the warning comes.
 *
 * <p>Condition: with every lead a monitor embraces and every sense resistor taken out, a load still has a supply and its return to a
 * pack. A load that a source of its own unit feeds is not counted.
 *
 * <p>Does not see: wrong scales, monitors inside a speed controller.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P33",
        name = "monitor-misses-load",
        severity = Severity.S3,
        since = "0.1",
        needs = {"leads that each current sensor embraces"})
public final class MonitorMissesLoad implements Sound {
    private static final String SENSES = "leads that the current sensor embraces";

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        Set<String> monitors = new LinkedHashSet<>();
        List<Integer> cut = new ArrayList<>();
        embraced(at, gaps, monitors, cut);
        shunts(at, monitors, cut);
        if (!gaps.isEmpty()) {
            gaps.tell(out, datum -> new Gaps.Way("follow the leads through the sensor", 3));
        } else if (!cut.isEmpty()) {
            judge(at, out, monitors, cut.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    private static void embraced(Situation at, Gaps gaps, Set<String> monitors, List<Integer> cut) {
        Set<String> sensed = new HashSet<>();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            List<String> senses = at.directory().unit(unit).senses();
            boolean monitor = at.directory().type(unit).kind().is(UnitKind.MONITOR);
            if (!at.circuit().aboard(unit) || (senses.isEmpty() && !monitor)) {
                continue;
            }
            if (senses.isEmpty() && !shunt(at, unit)) {
                gaps.add(SENSES, at.directory().name(unit));
            }
            if (!senses.isEmpty()) {
                monitors.add(at.directory().name(unit));
            }
            sensed.addAll(senses);
        }
        if (!sensed.isEmpty()) {
            for (Wire wire : at.wiring().wires()) {
                if (sensed.contains(wire.lead().id())) {
                    cut.add(at.wiring().conductorEdge(wire));
                }
            }
        }
    }

    private static boolean shunt(Situation at, int unit) {
        return at.directory().type(unit).parts().stream()
                .anyMatch(part -> part.kind().is(PartKind.SENSE_RESISTOR));
    }

    private static void shunts(Situation at, Set<String> monitors, List<Integer> cut) {
        for (Part part : at.wiring().parts()) {
            if (part.origin() instanceof Part.Inner inner
                    && inner.part().kind().is(PartKind.SENSE_RESISTOR)
                    && at.circuit().aboard(inner.unit())) {
                monitors.add(at.directory().name(inner.unit()));
                cut.add(part.edge());
            }
        }
    }

    private static void judge(Situation at, Outcomes out, Set<String> monitors, int[] cut) {
        Circuit without = at.circuit().without(cut);
        PowerGraph power = PowerGraph.of(without);
        Map<Integer, Consumer> missed = new LinkedHashMap<>();
        for (Consumer consumer : power.consumers()) {
            boolean on = without.aboard(consumer.unit())
                    && !consumer.loads().isEmpty()
                    && power.fed(consumer.plus())
                    && power.between(consumer.plus(), consumer.zero()).isPresent();
            if (on && power.feeding(consumer.plus()).stream().noneMatch(own -> own.unit() == consumer.unit())) {
                missed.putIfAbsent(consumer.unit(), consumer);
            }
        }
        out.looked();
        missed.values().forEach(consumer -> out.finding(draft(at, power, monitors, consumer)));
    }

    private static Draft draft(Situation at, PowerGraph power, Set<String> monitors, Consumer consumer) {
        String ref = at.directory().name(consumer.unit());
        String names = String.join(", ", monitors);
        Trail way = power.tree().trailTo(consumer.plus()).orElse(Trail.NONE);
        List<String> sources = new ArrayList<>();
        for (PowerSource source : power.feeding(consumer.plus())) {
            sources.add(at.directory().name(source.unit()));
        }
        Draft draft = Draft.of(Severity.S3, "current monitor " + names + " misses " + ref)
                .about(ref)
                .path(way)
                .sum("with what " + names + " sees taken out, " + ref + " is still fed by "
                        + String.join(", ", sources))
                .why("the charge counted is less than the charge used: the pack is empty before the warning")
                .meter("switch " + ref + " on and off: the current shown must change")
                .fix("take " + ref + " behind the sensor of " + names);
        List<Lead> along = Supplies.along(at, way);
        if (!along.isEmpty()) {
            // what passes the sensor by one lead is one mistake, however many units hang behind
            draft.at(along.get(along.size() - 1))
                    .cause("sensor passed by " + along.get(0).id());
        }
        return draft.seen(at.directory().unit(consumer.unit()));
    }
}
