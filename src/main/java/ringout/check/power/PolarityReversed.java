package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * A supply pin that does not lie above its own 0V.
 *
 * <p>Why it matters: reversed polarity destroys input stages the moment the pack goes in; a pack on its head beside another makes a
 * short of both.
 *
 * <p>Condition: voltages at rest are followed from every pack and regulator; a consumer's supply point must lie above its 0V, and
 * the plus of a working pack above its minus. A series link joins plus to minus and adds; an output with a 0V of its own is
 * judged against that; motor phases have no polarity.
 *
 * <p>Does not see: a plug that can be put in the wrong way round (M07, M08), a pack whose leads are exchanged inside.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P01",
        name = "polarity-reversed",
        severity = Severity.S1,
        since = "0.1",
        needs = {"packs and regulators as sources", "supply and 0V pins of each unit"})
public final class PolarityReversed implements Check {
    private static final String[] EXPLAINS = {"P02", "P03", "P04", "P05", "P06", "P09", "P10", "T05", "T14", "T15"};

    /** A supply point and the 0V it is held against, both as ties. */
    private record Pair(int plus, int zero) {}

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Gaps gaps = new Gaps();
        Map<Pair, List<Consumer>> reversed = new LinkedHashMap<>();
        for (Consumer consumer : power.consumers()) {
            if (at.circuit().aboard(consumer.unit()) && !consumer.inputs().isEmpty() && power.fed(consumer.plus())) {
                look(at, out, gaps, reversed, consumer);
            }
        }
        reversed.values().forEach(group -> out.finding(consumers(at, group)));
        for (PowerSource source : power.sources()) {
            if (source.kind() == PowerSource.Kind.PACK && onItsHead(power, source) && !shorted(at, source)) {
                out.finding(pack(at, source));
            }
        }
        unknownRoles(at, power, gaps);
        gaps.tell(out, PowerData::way);
    }

    /** A contact of unknown role where a supply or a return comes may be either. */
    private static void unknownRoles(Situation at, PowerGraph power, Gaps gaps) {
        for (int pin = 0; pin < at.wiring().pinCount(); pin++) {
            if (at.wiring().pin(pin).role().isMissing() && power.fed(pin) && Supplies.wired(at, pin)) {
                gaps.add(PowerData.ROLE, at.wiring().name(pin));
            }
        }
    }

    private static void look(
            Situation at, Outcomes out, Gaps gaps, Map<Pair, List<Consumer>> reversed, Consumer consumer) {
        PowerGraph power = PowerGraph.of(at.circuit());
        if (consumer.zero() < 0) {
            if (!consumer.frameReturn()) {
                gaps.add(PowerData.ZERO_PIN, at.directory().name(consumer.unit()));
            }
            return;
        }
        Pair pair = new Pair(power.ties().of(consumer.plus()), power.ties().of(consumer.zero()));
        Volts.Sign sign =
                power.between(consumer.plus(), consumer.zero()).map(Volts::sign).orElse(Volts.Sign.ABOVE);
        if (pair.plus() == pair.zero()) {
            return; // rail on 0V, not a matter of which way round
        }
        switch (sign) {
            case ABOVE -> out.looked();
            case NOT_ABOVE ->
                reversed.computeIfAbsent(pair, key -> new ArrayList<>()).add(consumer);
            case UNKNOWN -> gaps.add(power.missing(consumer.plus()));
        }
    }

    private static boolean onItsHead(PowerGraph power, PowerSource source) {
        return power.works(source)
                && power.between(source.plus(), source.minus()).map(Volts::sign).orElse(Volts.Sign.ABOVE)
                        == Volts.Sign.NOT_ABOVE
                && !power.ties().same(source.plus(), source.minus());
    }

    /** Whether + and 0V of a pack meet elsewhere: then that short turns it round, not its own leads. */
    private static boolean shorted(Situation at, PowerSource source) {
        PowerGraph power = PowerGraph.of(at.circuit());
        List<Wire> wires = Supplies.crossing(
                at, Set.of(power.ties().of(source.plus()), power.ties().of(source.minus())));
        return !wires.isEmpty()
                && wires.stream()
                        .noneMatch(wire -> at.wiring().unitOf(wire.fromPin()) == source.unit()
                                || at.wiring().unitOf(wire.toPin()) == source.unit());
    }

    private static Draft consumers(Situation at, List<Consumer> group) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Consumer first = group.stream().filter(Consumer::draws).findFirst().orElse(group.get(0));
        Volts volts = power.between(first.plus(), first.zero()).orElse(Volts.ZERO);
        List<String> names = group.stream().map(c -> Supplies.name(at, c)).toList();
        String below = volts.nominal().orElse(volts.high()) < 0
                ? Figures.of(-Supplies.middle(volts)) + " V below its 0V"
                : "no higher than its 0V";
        String many = group.size() == 1 ? names.get(0) : group.size() + " units (" + Supplies.names(names) + ")";
        String plusPin = at.wiring().name(first.inputs().get(0));
        List<Integer> zeros = Supplies.zeroPins(at, first.unit(), first.zero());
        String zeroPin = zeros.isEmpty()
                ? "0V of " + Supplies.name(at, first)
                : at.wiring().name(zeros.get(0));
        Draft draft = Draft.of(Severity.S1, "polarity reversed: + of " + many + " lies " + below)
                .about(names)
                .path(
                        zeros.isEmpty()
                                ? Trail.NONE
                                : power.tree().trailTo(zeros.get(0)).orElse(Trail.NONE))
                .sum(plusPin + " against " + zeroPin + ": " + Figures.of(Supplies.middle(volts))
                        + " V, must be above 0 V")
                .judged(Supplies.middle(volts), 0, "V", "common practice, no source")
                .why("input stages burn the moment the pack goes in")
                .meter("supply limited to 0.1 A, " + Supplies.name(at, first) + " unplugged, + lead of the meter at "
                        + plusPin + " and - at " + zeroPin + ": negative now, positive when right");
        group.forEach(c -> draft.cause(at.directory().name(c.unit()) + "/0V"));
        return fault(
                at, draft, Set.of(power.ties().of(first.plus()), power.ties().of(first.zero())), group);
    }

    /** Where + meets 0V is where the mistake is; without such a conductor, the leads of the consumers. */
    private static Draft fault(Situation at, Draft draft, Set<Integer> ties, List<Consumer> group) {
        List<Wire> wires = Supplies.crossing(at, ties);
        Optional<Integer> pack = onePack(at, wires);
        if (pack.isPresent()) {
            return turned(at, draft, pack.get());
        }
        List<Lead> leads = wires.isEmpty()
                ? Supplies.leadsAt(
                        at, group.stream().flatMap(c -> c.inputs().stream()).toList())
                : Supplies.leads(wires);
        leads.forEach(draft::at);
        String ids = Supplies.names(leads.stream().map(Lead::id).toList());
        return draft.fix(
                        wires.isEmpty()
                                ? "turn round one pack, or + and 0V of " + ids
                                : "exchange + and 0V at one end of " + ids)
                .explains(EXPLAINS);
    }

    /** The pack that all these conductors end at, if there is one: it is turned round. */
    private static Optional<Integer> onePack(Situation at, List<Wire> wires) {
        Set<Integer> packs = new TreeSet<>();
        for (Wire wire : wires) {
            for (int pin : new int[] {wire.fromPin(), wire.toPin()}) {
                if (isPack(at, pin)) {
                    packs.add(at.wiring().unitOf(pin));
                }
            }
        }
        boolean all = wires.stream().allMatch(wire -> isPack(at, wire.fromPin()) || isPack(at, wire.toPin()));
        return all && packs.size() == 1 ? packs.stream().findFirst() : Optional.empty();
    }

    private static boolean isPack(Situation at, int pin) {
        return at.wiring().is(pin, PinRole.PACK_PLUS) || at.wiring().is(pin, PinRole.PACK_MINUS);
    }

    private static Draft turned(Situation at, Draft draft, int unit) {
        List<Integer> pins = new ArrayList<>();
        for (int pin = at.wiring().firstPin(unit); pin < at.wiring().endPin(unit); pin++) {
            if (isPack(at, pin)) {
                pins.add(pin);
            }
        }
        List<Lead> leads = Supplies.leadsAt(at, pins);
        leads.forEach(draft::at);
        return Shorted.explains(draft)
                .fix("turn pack " + at.directory().name(unit) + " round: exchange "
                        + Supplies.names(leads.stream().map(Lead::id).toList()) + " at its + and -")
                .explains(EXPLAINS);
    }

    private static Draft pack(Situation at, PowerSource source) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Volts volts = power.between(source.plus(), source.minus()).orElse(Volts.ZERO);
        String ref = at.directory().name(source.unit());
        List<Integer> pins = new ArrayList<>();
        for (int pin = at.wiring().firstPin(source.unit()); pin < at.wiring().endPin(source.unit()); pin++) {
            pins.add(pin);
        }
        Draft draft = Draft.of(
                        Severity.S1,
                        "polarity reversed: pack " + ref + " is on its head beside another source: its + lies "
                                + Figures.of(-Supplies.middle(volts)) + " V below its -")
                .about(ref)
                .sum("other sources put its + at " + Figures.of(Supplies.middle(volts))
                        + " V against its -, the pack itself at " + Figures.of(Supplies.middle(source.volts())) + " V")
                .judged(Supplies.middle(volts), 0, "V", "common practice, no source")
                .why("both sources drive a short through each other as soon as the second goes in")
                .meter("packs out: from the lead of its + to 0V of the board under 1 ohm now, open when right")
                .fix("exchange + and - of " + ref)
                .explains("P02", "P04", "P06", "P28", "T05", "T14");
        Supplies.leadsAt(at, pins).forEach(draft::at);
        return Shorted.explains(draft);
    }
}
