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
        String from = sources.stream().map(s -> Supplies.name(at, s)).collect(Collectors.joining(" and "));
        Trail way = power.tree().trailTo(pin).orElse(Trail.NONE);
        Draft draft = Draft.of(worst.severity(), title(worst, many, from))
                .about(names)
                .path(way)
                .sum(group.stream()
                        .map(v -> (group.size() > 1 ? Supplies.name(at, v.consumer()) + " " : "") + v.sum())
                        .collect(Collectors.joining("; ")))
                .judged(worst.judged(), worst.limit(), "V", "data of " + types(at, group))
                .input(worst.most())
                .input(worst.least())
                .why(why(worst))
                .meter("unit unplugged, power on: volts at the lead of "
                        + at.wiring().name(pin))
                .fix(fix(worst, many, from, group.size() > 1))
                .explains("P20", "P22", "P25", "P18", "T05");
        causes(at, power, draft, group, sources);
        return draft;
    }

    private static RangeVerdict worst(List<RangeVerdict> group) {
        return group.stream()
                .max((a, b) -> Double.compare(excess(a), excess(b)))
                .orElseThrow();
    }

    private static double excess(RangeVerdict verdict) {
        return Math.abs(verdict.judged() - verdict.limit()) / Math.max(1, verdict.limit());
    }

    private static String title(RangeVerdict worst, String many, String from) {
        String gets = worst.isHigh() ? " up to " : " down to ";
        String takes = worst.isHigh() ? " V at most" : " V at least";
        String margin = worst.severity() == Severity.S3 ? " with margin" : "";
        return "outside supply range: " + many + " gets" + gets + Figures.of(worst.judged()) + " V from " + from
                + ", takes " + Figures.of(worst.limit()) + takes + margin;
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
