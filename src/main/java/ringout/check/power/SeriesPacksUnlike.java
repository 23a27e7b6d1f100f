package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
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
import ringout.model.Datum;

/**
 * Packs in series that differ in capacity, age, charge or chemistry.
 *
 * <p>Why it matters: the same current empties all of them, the weakest first; its cells fall below their limit while the voltage of the
 * stack still looks well.
 *
 * <p>Condition: capacities differ by more than 2 %, cycles by more than 20, voltages per cell at rest by more than 0.02 V, or the
 * chemistries differ.
 *
 * <p>Does not see: single cells; packs in parallel (P28).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P27",
        name = "series-packs-unlike",
        severity = Severity.S3,
        since = "0.1",
        needs = {"capacity", "cycles", "chemistry", "voltage at rest", "number of cells"})
public final class SeriesPacksUnlike implements Sound {
    private static final String CHEMISTRY = "chemistry of the cells";
    private static final String CYCLES = "cycles";
    private static final double HUNDRED = 100;

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        for (List<Pack> stack : Pack.stacks(at)) {
            if (stack.size() > 1) {
                judge(at, out, gaps, stack);
            }
        }
        gaps.tell(out, PowerData::way);
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, List<Pack> stack) {
        List<String> unlike = new ArrayList<>();
        boolean all = known(gaps, stack, CHEMISTRY, pack -> pack.rating().chemistry());
        if (all && apart(stack)) {
            unlike.add(
                    "chemistry " + each(stack, pack -> pack.rating().chemistry().or("?")));
        }
        if (known(gaps, stack, PowerData.CAPACITY, Pack::capacityAh)) {
            percent(at, unlike, stack);
        }
        if (known(gaps, stack, CYCLES, pack -> pack.unit().cycles())) {
            Threshold most = at.limit(Thresholds.PACK_CYCLES);
            spread(unlike, stack, most, "cycles", pack -> pack.unit().cycles().or(0) + 0.0, "");
        }
        boolean cells = known(gaps, stack, PowerData.CELLS, Pack::cells);
        if (known(gaps, stack, PowerData.REST, Pack::restV) && cells) {
            Threshold most = at.limit(Thresholds.CELL_VOLTS);
            spread(
                    unlike,
                    stack,
                    most,
                    "voltage of a cell",
                    pack -> pack.restV().or(0.0) / pack.cells().or(1),
                    " V");
        }
        if (!unlike.isEmpty()) {
            out.finding(draft(stack, unlike));
        } else if (gaps.isEmpty()) {
            out.looked();
        }
    }

    private static boolean apart(List<Pack> stack) {
        return stack.stream()
                        .map(pack -> pack.rating().chemistry().or("").strip().toLowerCase(Locale.ROOT))
                        .distinct()
                        .count()
                > 1;
    }

    private static boolean known(Gaps gaps, List<Pack> stack, String datum, Function<Pack, Datum<?>> of) {
        List<Pack> open =
                stack.stream().filter(pack -> !of.apply(pack).isKnown()).toList();
        open.forEach(pack -> gaps.add(datum, pack.name()));
        return open.isEmpty();
    }

    private static String each(List<Pack> stack, Function<Pack, String> said) {
        return String.join(
                ", ",
                stack.stream().map(pack -> pack.name() + " " + said.apply(pack)).toList());
    }

    private static double span(List<Pack> stack, Function<Pack, Double> of) {
        double high = stack.stream().mapToDouble(of::apply).max().orElse(0);
        return high - stack.stream().mapToDouble(of::apply).min().orElse(0);
    }

    private static void percent(Situation at, List<String> unlike, List<Pack> stack) {
        Threshold most = at.limit(Thresholds.PACK_CAPACITY);
        double largest = stack.stream()
                .mapToDouble(pack -> pack.capacityAh().or(0.0))
                .max()
                .orElse(1);
        double share = span(stack, pack -> pack.capacityAh().or(0.0)) / largest * HUNDRED;
        if (share > most.value()) {
            unlike.add("capacity "
                    + each(stack, pack -> Figures.of(pack.capacityAh().or(0.0)) + " Ah") + ", " + Figures.of(share)
                    + " % apart, at most " + Figures.of(most.value()) + " %");
        }
    }

    private static void spread(
            List<String> unlike,
            List<Pack> stack,
            Threshold most,
            String what,
            Function<Pack, Double> of,
            String unit) {
        double span = span(stack, of);
        if (span > most.value() + 1e-9) {
            unlike.add(what + " " + each(stack, pack -> Figures.of(of.apply(pack)) + unit) + ", " + Figures.of(span)
                    + unit + " apart, at most " + Figures.of(most.value()) + unit);
        }
    }

    private static Draft draft(List<Pack> stack, List<String> unlike) {
        List<String> names = stack.stream().map(Pack::name).toList();
        Draft draft = Draft.of(
                        Severity.S3,
                        "packs in series unlike: " + String.join(" + ", names) + " in "
                                + unlike.get(0).split(" " + names.get(0) + " ", 2)[0])
                .about(names)
                .sum(String.join("; ", unlike))
                .why("the weakest pack is empty first, and the voltage of the stack does not show it")
                .meter("each pack out: volts across its contacts, over its number of cells")
                .fix("fly " + String.join(" and ", names)
                        + " as a matched set: one capacity, one age, charged together");
        stack.forEach(pack -> {
            draft.at(pack.unit(), "pack");
            draft.input(pack.restV());
            draft.input(pack.capacityAh());
        });
        return draft;
    }
}
