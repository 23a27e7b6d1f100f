package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Rail;
import ringout.model.UnitKind;

/**
 * A receiver, compass or analog camera on the regulator of a load that disturbs it.
 *
 * <p>Why it matters: steps of current of a servo, pump or radio power stage go over the common supply into the receiver: fixes are lost,
 * the heading wanders, the picture has bars.
 *
 * <p>Condition: a sensitive unit and a noisy one take power from the same regulator, and neither the rail of the sensitive one nor the
 * leads to either carry a filter. Where the type does not say, satellite and command receivers count as sensitive, and actuators and
 * pumps as noisy.
 *
 * <p>Does not see: a supply with two sources on it (P06), what the filter holds back, coupling between leads.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P36",
        name = "noisy-neighbour",
        severity = Severity.S4,
        since = "0.1",
        needs = {"which types disturb and which mind it", "filters"})
public final class NoisyNeighbour implements Sound {
    private static final String DISTURBS = "whether it disturbs its supply, of the load";
    private static final String MINDS = "whether it minds a disturbed supply, of the unit";
    private static final String FILTER = "filter";

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Map<PowerSource, List<Consumer>> byRegulator = new LinkedHashMap<>();
        for (Consumer consumer : power.consumers()) {
            boolean one = power.lifting(power.ties().of(consumer.plus())).size() < 2;
            if (at.circuit().aboard(consumer.unit()) && consumer.draws() && one) {
                power.feeding(consumer.plus()).stream()
                        .filter(NoisyNeighbour::regulates)
                        .forEach(source -> byRegulator
                                .computeIfAbsent(source, key -> new ArrayList<>())
                                .add(consumer));
            }
        }
        Gaps gaps = new Gaps();
        byRegulator.forEach((source, on) -> judge(at, out, gaps, source, on));
        gaps.tell(out, datum -> new Gaps.Way("look it up in the maker's data, or listen on its supply", 5));
    }

    private static boolean regulates(PowerSource source) {
        return source.kind() == PowerSource.Kind.REGULATOR || source.kind() == PowerSource.Kind.CONVERTER;
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, PowerSource source, List<Consumer> on) {
        for (Consumer consumer : on) {
            Datum<Boolean> minds = minds(at, consumer);
            Datum<Boolean> filtered = filtered(at, consumer);
            if (minds.is(false)) {
                continue;
            }
            List<Consumer> others = on.stream()
                    .filter(other -> other.unit() != consumer.unit())
                    .filter(other -> !disturbs(at, other).is(false)
                            && !filtered(at, other).is(true))
                    .toList();
            List<Consumer> noisy = others.stream()
                    .filter(other ->
                            disturbs(at, other).isKnown() && filtered(at, other).isKnown())
                    .toList();
            if (filtered.is(true) || others.isEmpty()) {
                out.looked();
            } else if (!minds.isKnown() || !filtered.isKnown()) {
                ask(at, gaps, consumer, MINDS, minds);
            } else if (noisy.isEmpty()) {
                others.forEach(other -> ask(at, gaps, other, DISTURBS, disturbs(at, other)));
            } else {
                out.finding(draft(at, source, consumer, noisy));
            }
        }
    }

    private static void ask(Situation at, Gaps gaps, Consumer consumer, String datum, Datum<Boolean> known) {
        if (!known.isKnown()) {
            gaps.add(datum, at.directory().name(consumer.unit()));
        }
        if (!filtered(at, consumer).isKnown()) {
            List<String> rows = Supplies.leadsAt(at, consumer.inputs()).stream()
                    .filter(lead -> lead.filtered() instanceof Datum.Unknown)
                    .map(Lead::id)
                    .toList();
            (rows.isEmpty() ? List.of(at.directory().name(consumer.unit())) : rows).forEach(of -> gaps.add(FILTER, of));
        }
    }

    /** Whether a unit minds a disturbed supply: as its type says, else by its kind; not known when that is marked "?". */
    private static Datum<Boolean> minds(Situation at, Consumer consumer) {
        Datum<UnitKind> kind = at.directory().type(consumer.unit()).kind();
        Datum<Boolean> said = at.directory().type(consumer.unit()).sensitive();
        return usual(said, kind, kind.is(UnitKind.SATELLITE_RECEIVER) || kind.is(UnitKind.COMMAND_RECEIVER));
    }

    /** Whether a load disturbs its supply. */
    private static Datum<Boolean> disturbs(Situation at, Consumer consumer) {
        Datum<UnitKind> kind = at.directory().type(consumer.unit()).kind();
        Datum<Boolean> said = at.directory().type(consumer.unit()).noisy();
        return usual(said, kind, kind.is(UnitKind.ACTUATOR) || kind.is(UnitKind.PUMP));
    }

    private static Datum<Boolean> usual(Datum<Boolean> said, Datum<UnitKind> kind, boolean usual) {
        boolean open = said instanceof Datum.Unknown || kind instanceof Datum.Unknown;
        return said.isKnown() ? said : open ? Datum.unknown() : Datum.of(usual);
    }

    /** Whether its rail or a lead to it carries a filter. */
    private static Datum<Boolean> filtered(Situation at, Consumer consumer) {
        List<Datum<Boolean>> said = new ArrayList<>();
        consumer.limits().map(Rail::filtered).ifPresent(said::add);
        Supplies.leadsAt(at, consumer.inputs()).forEach(lead -> said.add(lead.filtered()));
        if (said.stream().anyMatch(one -> one.is(true))) {
            return Datum.of(true);
        }
        return said.stream().anyMatch(one -> one instanceof Datum.Unknown) ? Datum.unknown() : Datum.of(false);
    }

    private static Draft draft(Situation at, PowerSource source, Consumer consumer, List<Consumer> others) {
        String ref = at.directory().name(consumer.unit());
        String loud = others.stream()
                .map(other -> at.directory().name(other.unit()))
                .distinct()
                .collect(Collectors.joining(", "));
        String regulator = at.directory().name(source.unit());
        Draft draft = Draft.of(
                        at.flightCritical(ref) ? Severity.S3 : Severity.S4,
                        "noisy neighbour: " + ref + " shares " + regulator + " with " + loud + ", no filter between")
                .about(ref, regulator)
                .sum(ref + " and " + loud + " on " + regulator + ", 0 filters")
                .why("steps of their current reach " + ref + " over the supply: lost fixes, bars, noise")
                .meter("watch " + ref + " while " + loud + " works, then with it off")
                .fix("filter the supply of " + ref + " or of " + loud + ", or give " + ref + " a regulator of its own");
        for (Lead lead : Supplies.leadsAt(at, consumer.inputs())) {
            draft.at(lead);
        }
        others.forEach(other -> draft.seen(at.directory().unit(other.unit())));
        return draft;
    }
}
