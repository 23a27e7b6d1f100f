package ringout.check.power;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
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
import ringout.graph.Trail;
import ringout.graph.power.PowerGraph;
import ringout.model.Origin;

/**
 * Packs in parallel that charge each other when they are joined.
 *
 * <p>Why it matters: nothing but a few milliohm limits the current between two packs of different voltage: contacts weld, leads and
 * cells heat, and lithium cells charged too fast burn.
 *
 * <p>Formula: I = dV / sum of R in A: the difference of their voltages at rest over the resistance of both packs, of the leads and of
 * the contacts between them. More than 1 C of the smaller pack is too much; unlike numbers of cells always are.
 *
 * <p>Does not see: how they share the load, which for unequal lead lengths is usually harmless: 0.35 m against 0.75 m of 8 AWG share
 * 52 to 48.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P28",
        name = "packs-apart",
        severity = Severity.S1,
        since = "0.1",
        needs = {"voltage at rest of each pack", "resistance of a cell", "capacity", "size and length of pack leads"})
public final class PacksApart implements Sound {
    /** Two stacks side by side. */
    private record Pair(List<Pack> one, List<Pack> two) {
        Stream<Pack> packs() {
            return Stream.concat(one.stream(), two.stream());
        }

        List<String> names() {
            return packs().map(Pack::name).toList();
        }
    }

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        List<List<Pack>> stacks = Pack.stacks(at);
        Gaps gaps = new Gaps();
        for (int i = 0; i < stacks.size(); i++) {
            for (int j = i + 1; j < stacks.size(); j++) {
                Pair pair = new Pair(stacks.get(i), stacks.get(j));
                boolean side = power.ties().same(top(pair.one), top(pair.two))
                        && power.ties().same(bottom(pair.one), bottom(pair.two));
                if (side) {
                    judge(at, out, gaps, pair);
                }
            }
        }
        gaps.tell(out, PowerData::way);
    }

    private static int top(List<Pack> stack) {
        return stack.get(stack.size() - 1).source().plus();
    }

    private static int bottom(List<Pack> stack) {
        return stack.get(0).source().minus();
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, Pair pair) {
        if (pair.packs().anyMatch(pack -> !pack.cells().isKnown())) {
            note(gaps, pair, PowerData.CELLS, pack -> pack.cells().isKnown());
            return;
        }
        if (cells(pair.one) != cells(pair.two)) {
            out.finding(unlike(pair));
            return;
        }
        PackLoop loop = PackLoop.of(at, top(pair.one), top(pair.two), bottom(pair.one), bottom(pair.two), pair.packs());
        Threshold most = at.limit(Thresholds.PACK_RATE);
        OptionalDouble ah = smallest(pair);
        if (ah.isEmpty() || rest(pair.one).isEmpty() || rest(pair.two).isEmpty() || !loop.known()) {
            note(gaps, pair, PowerData.CAPACITY, pack -> pack.capacityAh().isKnown());
            note(gaps, pair, PowerData.REST, pack -> pack.restV().isKnown());
            gaps.add(loop.missing());
            return;
        }
        double apart = Math.abs(rest(pair.one).getAsDouble() - rest(pair.two).getAsDouble());
        double amps = apart / loop.ohm();
        if (amps > most.value() * ah.getAsDouble()) {
            out.finding(apart(pair, loop, apart, ah.getAsDouble(), most));
        } else if (apart <= most.value() * ah.getAsDouble() * (loop.ohm() - loop.usualOhm())) {
            out.looked();
        } else {
            gaps.add(loop.usual());
        }
    }

    private static void note(Gaps gaps, Pair pair, String datum, java.util.function.Predicate<Pack> known) {
        pair.packs().filter(pack -> !known.test(pack)).forEach(pack -> gaps.add(datum, pack.name()));
    }

    private static int cells(List<Pack> stack) {
        return stack.stream().mapToInt(pack -> pack.cells().or(0)).sum();
    }

    private static OptionalDouble rest(List<Pack> stack) {
        return stack.stream().allMatch(pack -> pack.restV().isKnown())
                ? OptionalDouble.of(
                        stack.stream().mapToDouble(pack -> pack.restV().or(0.0)).sum())
                : OptionalDouble.empty();
    }

    private static OptionalDouble smallest(Pair pair) {
        return pair.packs().allMatch(pack -> pack.capacityAh().isKnown())
                ? pair.packs().mapToDouble(pack -> pack.capacityAh().or(0.0)).min()
                : OptionalDouble.empty();
    }

    private static String name(List<Pack> stack) {
        return String.join(" + ", stack.stream().map(Pack::name).toList());
    }

    private static Draft unlike(Pair pair) {
        return start(
                        pair,
                        "packs of unlike cells in parallel: " + name(pair.one) + " " + cells(pair.one) + "S, "
                                + name(pair.two) + " " + cells(pair.two) + "S")
                .sum(name(pair.one) + " " + cells(pair.one) + " cells, " + name(pair.two) + " " + cells(pair.two)
                        + " cells: equal numbers wanted")
                .judged(cells(pair.one), cells(pair.two), "cells", "common practice, no source")
                .why("the higher pack charges the lower one without limit until something burns")
                .fix("fit packs of equal cells at " + name(pair.one) + " and " + name(pair.two));
    }

    private static Draft apart(Pair pair, PackLoop loop, double apart, double ah, Threshold most) {
        double amps = apart / loop.ohm();
        double rate = amps / ah;
        String one = Figures.of(rest(pair.one)) + " V";
        String two = Figures.of(rest(pair.two)) + " V";
        boolean assumed =
                loop.assumed() || pair.packs().anyMatch(pack -> pack.restV().source() == Origin.ASSUMED);
        Draft draft = start(
                        pair,
                        "packs apart in parallel: " + name(pair.one) + " " + one + ", " + name(pair.two) + " " + two
                                + ", " + Figures.of(amps) + " A between them when joined")
                .path(loop.trail())
                .sum(Figures.of(apart) + " V / " + Figures.of(loop.ohm() * 1000) + " mOhm = " + Figures.of(amps)
                        + " A, / " + Figures.of(ah) + " Ah = " + Figures.of(rate) + " C, at most "
                        + Figures.of(most.value()) + " C")
                .judged(rate, most.value(), "C", most.source())
                .onAssumption(assumed && rate * 0.8 <= most.value())
                .why("only milliohms limit the current from the fuller to the emptier pack: contacts weld, cells heat")
                .fix("charge " + name(pair.one) + " and " + name(pair.two) + " to less than "
                        + Figures.of(most.value() * ah * loop.ohm()) + " V apart before they are joined");
        pair.packs().forEach(pack -> draft.input(pack.restV()));
        return draft;
    }

    private static Draft start(Pair pair, String title) {
        List<String> all = new ArrayList<>(pair.names());
        Draft draft = Draft.of(Severity.S1, title)
                .about(all)
                .path(Trail.NONE)
                .meter("packs out: volts across the main contacts of each")
                .explains("P06", "P27", "P29", "B05");
        pair.packs().forEach(pack -> draft.at(pack.unit(), "voltage at rest"));
        return draft;
    }
}
