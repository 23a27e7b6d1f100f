package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.finding.Severity;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.model.Datum;
import ringout.model.Rail;
import ringout.model.UnitType;

/**
 * An external source, such as USB, a charger or ground power, on one net with a source of the aircraft, and nothing that blocks.
 *
 * <p>Why it matters: a computer port feeds the servos of the aircraft, or the pack of the aircraft feeds the port; the plug that comes
 * and goes makes a source out of a lead in somebody's hand.
 *
 * <p>Condition: in a declared state an external source and one of the aircraft both work and meet on one net (points tied by links,
 * fuses and closed switches, or behind a diode that leads there), and the one that can be lower does not block: its output is
 * neither joined by diodes inside (ored) nor declared to pass no current backwards. Equal packs and outputs rated for parallel work do
 * not block either. A source is external when its type says so, or, when the type is silent and the source takes nothing from the
 * aircraft, when its name or title says USB, charger, ground power or bench supply.
 *
 * <p>Does not see: an external source that no state has aboard; the forward voltage of the diode between the two.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P35",
        name = "external-with-internal",
        severity = Severity.S2,
        since = "0.2",
        needs = {"which sources are external", "whether an output blocks", "voltage of both when only one blocks"})
public final class ExternalWithInternal implements Sound {
    static final String EXTERNAL = "whether it is an external source";
    static final String BLOCKS = "whether the output blocks backward current";
    private static final Pattern WORDS = Pattern.compile("\\b(usb|charger|ground power|bench supply)");

    /** Whether something holds, or nobody knows. */
    private enum Answer {
        YES,
        NO,
        UNKNOWN
    }

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Set<Integer> ties = new LinkedHashSet<>();
        for (PowerSource source : power.sources()) {
            if (power.works(source)) {
                ties.add(power.ties().of(source.plus()));
            }
        }
        Gaps gaps = new Gaps();
        for (int tie : ties) {
            List<PowerSource> external = new ArrayList<>();
            List<PowerSource> internal = new ArrayList<>();
            List<PowerSource> meet = meeting(power, tie);
            sort(at, gaps, meet, external, internal);
            for (PowerSource outside : external) {
                for (PowerSource inside : internal) {
                    if (outside.unit() != inside.unit()) {
                        judge(at, out, gaps, tie, outside, inside);
                    }
                }
            }
        }
        gaps.tell(out, ExternalWithInternal::way);
    }

    private static Gaps.Way way(String datum) {
        return datum.equals(EXTERNAL)
                ? new Gaps.Way("see whether it flies, and write it down with its type", 1)
                : PowerData.way(datum);
    }

    /** What lifts a tie, directly or through diodes that lead to it. */
    private static List<PowerSource> meeting(PowerGraph power, int tie) {
        Set<PowerSource> meet = new LinkedHashSet<>(power.lifting(tie));
        meet.addAll(power.throughDiodes(tie));
        return List.copyOf(meet);
    }

    private static void sort(
            Situation at, Gaps gaps, List<PowerSource> meet, List<PowerSource> external, List<PowerSource> internal) {
        for (PowerSource source : meet) {
            switch (external(at, source)) {
                case YES -> external.add(source);
                case NO -> internal.add(source);
                case UNKNOWN -> {
                    if (meet.stream().anyMatch(other -> other.unit() != source.unit())) {
                        gaps.add(EXTERNAL, at.directory().name(source.unit()));
                    }
                }
            }
        }
    }

    private static Answer external(Situation at, PowerSource source) {
        UnitType type = at.directory().type(source.unit());
        if (type.external() instanceof Datum.Unknown) {
            return Answer.UNKNOWN;
        }
        if (type.external().isMissing() && source.inputs().isEmpty()) {
            String said = (type.name() + " " + type.title().or("")).toLowerCase(Locale.ROOT);
            return WORDS.matcher(said).find() ? Answer.YES : Answer.NO;
        }
        return type.external().is(true) ? Answer.YES : Answer.NO;
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, int tie, PowerSource outside, PowerSource inside) {
        Answer into = pushes(at, tie, outside, inside);
        Answer outOf = pushes(at, tie, inside, outside);
        if (into == Answer.YES || outOf == Answer.YES) {
            out.finding(ExternalDraft.of(at, outside, inside, into == Answer.YES, outOf == Answer.YES));
            return;
        }
        if (into == Answer.UNKNOWN) {
            ask(at, gaps, outside, inside);
        }
        if (outOf == Answer.UNKNOWN) {
            ask(at, gaps, inside, outside);
        }
        if (into == Answer.NO && outOf == Answer.NO) {
            out.looked();
        }
    }

    /** Whether a source can drive current into another that lifts the tie itself. */
    private static Answer pushes(Situation at, int tie, PowerSource from, PowerSource into) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Answer blocks = blocks(into);
        if (!power.lifting(tie).contains(into) || blocks == Answer.YES) {
            return Answer.NO;
        }
        Volts high = power.height(from);
        Volts low = power.height(into);
        if (high.high() <= low.low()) {
            return Answer.NO;
        }
        boolean known = from.missing().isEmpty() && into.missing().isEmpty();
        boolean nominal = high.nominal().isPresent()
                && low.nominal().isPresent()
                && high.nominal().getAsDouble() >= low.nominal().getAsDouble();
        return blocks == Answer.NO && (known || nominal) ? Answer.YES : Answer.UNKNOWN;
    }

    private static Answer blocks(PowerSource source) {
        Datum<Boolean> ored = source.rail().map(Rail::ored).orElse(Datum.notAsked());
        Datum<Boolean> blocking = source.rail().map(Rail::reverseBlocking).orElse(Datum.notAsked());
        if (ored.is(true) || blocking.is(true)) {
            return Answer.YES;
        }
        return ored instanceof Datum.Unknown || blocking instanceof Datum.Unknown ? Answer.UNKNOWN : Answer.NO;
    }

    private static void ask(Situation at, Gaps gaps, PowerSource from, PowerSource into) {
        if (blocks(into) == Answer.UNKNOWN) {
            gaps.add(BLOCKS, at.directory().name(into.unit()));
        } else {
            gaps.add(from.missing());
            gaps.add(into.missing());
        }
    }
}
