package ringout.check.power;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Severity;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.Rail;

/**
 * Two sources of different units on one net.
 *
 * <p>Why it matters: the stronger drives current into the output of the weaker and lifts everything on its rail; the classic is the
 * red wire in a servo or controller lead. Equal nominal voltages are not equal voltages.
 *
 * <p>Condition: two working sources of different units lift one net, or nets tied by links, fuses or closed switches, and not
 * all of them are declared joined by diodes inside (ored) or rated for parallel work, and they are not equal packs. S1 when they are
 * set more than 0.3 V apart or the stronger can push more than an output of the weaker stands, else S2. Inputs joined by
 * diodes are no parallel connection; a diode that can push into an output is.
 *
 * <p>Does not see: current pushed back in one state only (P07), unequal charge of equal packs (P28).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(code = "P06", name = "two-sources", severity = Severity.S1, since = "0.1")
public final class TwoSources implements Sound {
    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Set<Integer> ties = new LinkedHashSet<>();
        for (PowerSource source : power.sources()) {
            if (power.works(source)) {
                ties.add(power.ties().of(source.plus()));
            }
        }
        for (int tie : ties) {
            out.looked();
            List<PowerSource> meet = meeting(power, tie);
            if (units(meet) > 1 && !allowed(at, power, tie, meet)) {
                out.finding(TwoSourcesDraft.of(at, severity(at, meet), tie, ordered(meet)));
            }
        }
    }

    /** What lifts a tie directly, and what can push into it through a diode. */
    private static List<PowerSource> meeting(PowerGraph power, int tie) {
        List<PowerSource> meet = new ArrayList<>(power.lifting(tie));
        for (PowerSource pushing : power.throughDiodes(tie)) {
            boolean conducts = meet.stream()
                    .anyMatch(stiff -> pushing.volts().high() > stiff.volts().low());
            if (conducts && !meet.contains(pushing)) {
                meet.add(pushing);
            }
        }
        return meet;
    }

    private static long units(List<PowerSource> sources) {
        return sources.stream().map(PowerSource::unit).distinct().count();
    }

    private static boolean allowed(Situation at, PowerGraph power, int tie, List<PowerSource> meet) {
        List<PowerSource> stiff = power.lifting(tie);
        return stiff.stream().allMatch(TwoSources::declared) || equalPacks(at, power, meet);
    }

    private static boolean declared(PowerSource source) {
        return source.rail().map(Rail::ored).orElse(Datum.notAsked()).is(true)
                || source.rail()
                        .map(Rail::parallelRated)
                        .orElse(Datum.notAsked())
                        .is(true);
    }

    private static boolean equalPacks(Situation at, PowerGraph power, List<PowerSource> meet) {
        Set<String> types = new LinkedHashSet<>();
        Set<Volts> heights = new LinkedHashSet<>();
        for (PowerSource source : meet) {
            if (source.kind() != PowerSource.Kind.PACK) {
                return false;
            }
            types.add(at.directory().unit(source.unit()).type());
            heights.add(power.height(source));
        }
        return types.size() == 1 && heights.size() == 1;
    }

    /** Stronger first. */
    private static List<PowerSource> ordered(List<PowerSource> meet) {
        return meet.stream()
                .sorted(Comparator.comparingDouble((PowerSource s) -> -Supplies.middle(s.volts()))
                        .thenComparing(PowerSource::name))
                .toList();
    }

    private static Severity severity(Situation at, List<PowerSource> meet) {
        List<PowerSource> ordered = ordered(meet);
        PowerSource strong = ordered.get(0);
        PowerSource weak = ordered.get(ordered.size() - 1);
        Threshold limit = at.limit(Thresholds.SOURCES_APART);
        OptionalDouble apart = apart(strong, weak);
        boolean far = apart.isPresent()
                ? apart.getAsDouble() > limit.value()
                : strong.volts().low() - weak.volts().high() > limit.value();
        return far || strong.volts().high() > stands(at, weak) ? Severity.S1 : Severity.S2;
    }

    /** How far apart two sources are set in V, if both are known. */
    static OptionalDouble apart(PowerSource strong, PowerSource weak) {
        return strong.volts().nominal().isPresent() && weak.volts().nominal().isPresent()
                ? OptionalDouble.of(strong.volts().nominal().getAsDouble()
                        - weak.volts().nominal().getAsDouble())
                : OptionalDouble.empty();
    }

    /** What an output of a source stands from outside in V; infinite when its pins do not say. */
    static double stands(Situation at, PowerSource source) {
        double least = Double.POSITIVE_INFINITY;
        for (int pin = at.wiring().firstPin(source.unit()); pin < at.wiring().endPin(source.unit()); pin++) {
            if (PowerGraph.isSupply(at.wiring().pin(pin).role().or(PinRole.NONE))
                    && at.circuit().nets().same(pin, source.plus())) {
                least = Math.min(least, at.wiring().pin(pin).maxV().or(Double.POSITIVE_INFINITY));
            }
        }
        return least;
    }

    /** The token of all that follows from these sources on one net. */
    static String token(Situation at, List<PowerSource> sources) {
        return sources.stream()
                .map(source -> at.directory().name(source.unit()))
                .distinct()
                .sorted()
                .collect(Collectors.joining(" + ", "sources ", ""));
    }
}
