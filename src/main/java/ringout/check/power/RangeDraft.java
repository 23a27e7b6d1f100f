package ringout.check.power;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Lead;

/** Writes the finding that units get more or less than they take. */
final class RangeDraft {
    private RangeDraft() {}

    static Draft of(Situation at, List<RangeVerdict> group) {
        RangeVerdict worst = worst(group);
        PowerGraph power = PowerGraph.of(at.circuit());
        Consumer consumer = worst.consumer();
        List<String> names =
                group.stream().map(v -> Supplies.name(at, v.consumer())).toList();
        String many = names.size() == 1 ? names.get(0) : names.size() + " units (" + Supplies.names(names) + ")";
        int pin = consumer.inputs().get(0);
        List<PowerSource> sources = power.feeding(consumer.plus());
        String from = sources.stream().map(s -> Supplies.stack(at, s)).collect(Collectors.joining(" and "));
        Trail way = power.tree().trailTo(pin).orElse(Trail.NONE);
        Draft draft = Draft.of(worst.severity(), title(worst, many, names.size() == 1 ? "s" : "", from))
                .about(names)
                .path(way)
                .sum(sum(at, group))
                .judged(worst.judged(), worst.limit(), "V", "data of " + types(at, group))
                .input(worst.most())
                .input(worst.least())
                .why(why(worst))
                .meter(meter(worst, sources, at.wiring().name(pin)))
                .fix(fix(worst, many, from, group.size() > 1))
                .explains("P20", "P22", "P25", "P18", "T05");
        causes(at, power, draft, group, sources);
        return draft;
    }

    /** One arithmetic for all that share it, else one a unit. */
    private static String sum(Situation at, List<RangeVerdict> group) {
        List<String> sums = group.stream().map(RangeVerdict::sum).distinct().toList();
        if (sums.size() == 1) {
            return (group.size() > 1 ? "each " : "") + sums.get(0);
        }
        return group.stream()
                .map(v -> Supplies.name(at, v.consumer()) + " " + v.sum())
                .collect(Collectors.joining("; "));
    }

    private static String meter(RangeVerdict worst, List<PowerSource> sources, String pin) {
        boolean packs = sources.stream().allMatch(source -> source.kind() == PowerSource.Kind.PACK);
        String charge = worst.isHigh() ? ", packs full" : ", packs nearly empty";
        return "unit unplugged, power on" + (packs ? charge : "") + ": volts at the lead of " + pin + ", "
                + Figures.of(worst.limit()) + (worst.isHigh() ? " V at most" : " V at least") + " when right";
    }

    private static RangeVerdict worst(List<RangeVerdict> group) {
        return group.stream()
                .max((a, b) -> Double.compare(excess(a), excess(b)))
                .orElseThrow();
    }

    private static double excess(RangeVerdict verdict) {
        return Math.abs(verdict.judged() - verdict.limit()) / Math.max(1, verdict.limit());
    }

    private static String title(RangeVerdict worst, String many, String s, String from) {
        String gets = worst.isHigh() ? " up to " : " down to ";
        if (worst.isOpen()) {
            gets = worst.isHigh() ? " at least " : " at most ";
        }
        String takes = worst.isHigh() ? " V at most" : " V at least";
        String margin = worst.severity() == Severity.S3 ? " with margin" : "";
        return "outside supply range: " + many + " get" + s + gets + Figures.of(worst.judged()) + " V from " + from
                + ", take" + s + " " + Figures.of(worst.limit()) + takes + margin;
    }

    private static String why(RangeVerdict worst) {
        return switch (worst.severity()) {
            case S1 -> "the input burns the moment power is applied, or at the first full pack";
            case S2 -> "the unit stops or resets before the packs are empty";
            default -> "a little drop or tolerance more and the unit is out of its range";
        };
    }

    private static String fix(RangeVerdict worst, String many, String from, boolean source) {
        if (source) {
            return "replace " + from + " by what these units take";
        }
        return worst.severity() == Severity.S3
                ? "fit a type with a wider range for " + many
                : "feed " + many + " from a rail inside its range";
    }

    private static String types(Situation at, List<RangeVerdict> group) {
        Set<String> types = group.stream()
                .map(v -> at.directory().unit(v.consumer().unit()).type())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        return String.join(", ", types);
    }

    /** A wrong source is one mistake for all; two sources on one net have their own finding; else the leads at the unit. */
    private static void causes(
            Situation at, PowerGraph power, Draft draft, List<RangeVerdict> group, List<PowerSource> sources) {
        int tie = power.ties().of(group.get(0).consumer().plus());
        if (power.lifting(tie).size() > 1) {
            draft.cause(TwoSources.token(at, power.lifting(tie)));
        }
        if (group.size() > 1) {
            sources.forEach(s -> draft.at(at.directory().unit(s.unit()), "voltage"));
            return;
        }
        for (Lead lead : Supplies.leadsAt(at, group.get(0).consumer().inputs())) {
            draft.at(lead);
        }
        draft.seen(at.directory().unit(group.get(0).consumer().unit()));
    }
}
