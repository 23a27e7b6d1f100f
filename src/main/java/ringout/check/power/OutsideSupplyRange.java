package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.check.form.Thresholds;
import ringout.finding.Severity;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.Volts;
import ringout.model.Datum;
import ringout.model.Rail;

/**
 * A unit that gets more or less than it takes.
 *
 * <p>Why it matters: above its range a unit burns, below it stops, and a pack passes its nominal voltage only on the way down: 12
 * cells in series "44.4 V" are 50.4 V full and 39.6 V empty.
 *
 * <p>Formula: highest = full packs at rest, or the most a regulator gives; lowest = empty packs at rest less the sag inside the
 * packs with all loads at their peak, or the least a regulator gives. Both must lie inside the range of the unit with 3 % margin.
 * Above the range S1, below it S2, inside it without margin S3. A nominal voltage is never held against a limit.
 *
 * <p>Does not see: the drop of leads and contacts (P17, P18), a regulator that runs out of input (P20).
 *
 * <p>Reference: maker's data of the unit; the margin is judgement.
 */
@CheckInfo(
        code = "P04",
        name = "outside-supply-range",
        severity = Severity.S1,
        since = "0.1",
        needs = {
            "supply range of each unit",
            "voltage of a full and of an empty cell",
            "resistance of a cell",
            "least and most voltage of each regulator",
            "peak current of each load"
        })
public final class OutsideSupplyRange implements Sound {
    /** A source is wrong rather than its consumers when most of at least this many are out of range. */
    private static final int MANY = 3;

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        PackSag sags = new PackSag(at);
        Gaps gaps = new Gaps();
        Map<String, List<RangeVerdict>> bad = new LinkedHashMap<>();
        for (Consumer consumer : power.consumers()) {
            if (judged(at, power, consumer)) {
                judge(at, out, gaps, sags, consumer)
                        .ifPresent(verdict -> bad.computeIfAbsent(
                                        verdict.severity() + " " + power.ties().of(consumer.plus()),
                                        key -> new ArrayList<>())
                                .add(verdict));
            }
        }
        bad.values().forEach(group -> tell(at, out, power, group));
        gaps.tell(out, PowerData::way);
    }

    private static boolean judged(Situation at, PowerGraph power, Consumer consumer) {
        return at.circuit().aboard(consumer.unit())
                && !consumer.inputs().isEmpty()
                && power.fed(consumer.plus())
                && power.between(consumer.plus(), consumer.zero())
                        .filter(volts -> volts.sign() == Volts.Sign.ABOVE)
                        .isPresent();
    }

    private static Optional<RangeVerdict> judge(
            Situation at, Outcomes out, Gaps gaps, PackSag sags, Consumer consumer) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Volts volts = power.between(consumer.plus(), consumer.zero()).orElse(Volts.ZERO);
        double margin = at.limit(Thresholds.SUPPLY_MARGIN).value() / 100;
        Datum<Double> most = consumer.limits().map(Rail::maxV).orElse(Datum.notAsked());
        Datum<Double> least = consumer.limits().map(Rail::minV).orElse(Datum.notAsked());
        if ((most.isMissing() || least.isMissing()) && !onlyPasses(consumer)) {
            gaps.add(PowerData.SUPPLY_RANGE, Supplies.name(at, consumer));
        }
        RangeVerdict verdict = new RangeVerdict(consumer, volts, sags.of(consumer), least, most, margin);
        boolean sourceKnown = power.missing(consumer.plus()).isEmpty();
        if (verdict.isBad() && (sourceKnown || verdict.isCertain())) {
            return Optional.of(verdict);
        }
        if (most.isKnown() && !verdict.highPasses() && !sourceKnown) {
            gaps.add(power.missing(consumer.plus()));
        } else if (least.isKnown() && !verdict.lowPasses(false) && !sourceKnown) {
            gaps.add(power.missing(consumer.plus()));
        } else if (least.isKnown() && !verdict.sag().gaps().isEmpty()) {
            gaps.add(verdict.sag().gaps());
        } else if (most.isKnown() || least.isKnown()) {
            out.looked();
        }
        return Optional.empty();
    }

    /** A board of which nobody tells a range only passes what comes. */
    private static boolean onlyPasses(Consumer consumer) {
        boolean silent = consumer.limits()
                .map(rail -> rail.minV().isMissing() && rail.maxV().isMissing())
                .orElse(true);
        return silent && !consumer.draws() && consumer.loads().isEmpty();
    }

    /** One finding for a wrong source, one a unit otherwise. */
    private static void tell(Situation at, Outcomes out, PowerGraph power, List<RangeVerdict> group) {
        int tie = power.ties().of(group.get(0).consumer().plus());
        int all = power.consumersOn(tie).size();
        boolean source = group.size() >= MANY && 2 * group.size() > all;
        if (source) {
            out.finding(RangeDraft.of(at, group));
        } else {
            group.forEach(verdict -> out.finding(RangeDraft.of(at, List.of(verdict))));
        }
    }
}
