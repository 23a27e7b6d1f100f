package ringout.check.power;

import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * A rail that is joined to 0V.
 *
 * <p>Why it matters: the pack is shorted when it goes in: hundreds of amperes through the thinnest conductor on the way.
 *
 * <p>Condition: a supply pin and a 0V pin lie on one net, or on nets tied by fuses, links, closed switches or sense resistors, and
 * belong to one source reference; or plus and minus of one pack do. A series link joins plus to minus of two packs, which is no 0V. A 0V pin that stands on another
 * source on purpose, such as that of an output with a 0V of its own, is a return and not a short.
 *
 * <p>Does not see: a short inside a unit, a chafed lead (M28).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(code = "P02", name = "rail-on-0v", severity = Severity.S1, since = "0.1")
public final class RailOnZero implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        BitSet shorted = shorted(power);
        BitSet returns = returns(at, power);
        int ties = power.ties().count();
        for (int tie = 0; tie < ties; tie++) {
            if (power.supplyPins(tie) > 0) {
                out.looked();
                if (shorted.get(tie) || (power.zeroPins(tie) > 0 && wrong(at, power, tie, returns))) {
                    out.finding(draft(at, tie));
                }
            }
        }
    }

    /** Ties that hold both ends of a working source. */
    private static BitSet shorted(PowerGraph power) {
        BitSet shorted = new BitSet();
        for (PowerSource source : power.sources()) {
            if (power.works(source) && source.minus() >= 0 && power.ties().same(source.plus(), source.minus())) {
                shorted.set(power.ties().of(source.plus()));
            }
        }
        return shorted;
    }

    /** Units with a supply that truly stands above their 0V, by unit number: their 0V pins are returns. */
    private static BitSet returns(Situation at, PowerGraph power) {
        BitSet returns = new BitSet();
        for (Consumer consumer : power.consumers()) {
            returns.set(
                    consumer.unit(), returns.get(consumer.unit()) || above(power, consumer.plus(), consumer.zero()));
        }
        for (PowerSource source : power.sources()) {
            returns.set(
                    source.unit(),
                    returns.get(source.unit())
                            || (at.circuit().aboard(source.unit()) && above(power, source.plus(), source.minus())));
        }
        return returns;
    }

    private static boolean above(PowerGraph power, int plus, int zero) {
        return zero >= 0
                && !power.ties().same(plus, zero)
                && power.between(plus, zero).map(Volts::sign).orElse(Volts.Sign.UNKNOWN) == Volts.Sign.ABOVE;
    }

    private static boolean wrong(Situation at, PowerGraph power, int tie, BitSet returns) {
        boolean lifted = !power.lifting(tie).isEmpty();
        if (!lifted
                || power.consumersOn(tie).stream()
                        .anyMatch(c -> c.zero() >= 0 && power.ties().of(c.zero()) == tie)) {
            return true;
        }
        return zeroPins(at, power, tie).noneMatch(pin -> returns.get(at.wiring().unitOf(pin)));
    }

    private static IntStream zeroPins(Situation at, PowerGraph power, int tie) {
        return IntStream.range(0, at.wiring().pinCount())
                .filter(pin -> at.wiring().is(pin, PinRole.ZERO_V)
                        && power.ties().of(pin) == tie
                        && at.circuit().aboard(at.wiring().unitOf(pin)));
    }

    private static Draft draft(Situation at, int tie) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Wiring wiring = at.wiring();
        List<Wire> wires = Supplies.crossing(at, Set.of(tie));
        Trail way = wires.isEmpty()
                ? shortWay(power, tie).or(() -> anyWay(at, power, tie)).orElse(Trail.NONE)
                : over(wiring, wires.get(0));
        List<Lead> leads = wires.isEmpty() ? Supplies.along(at, way) : Supplies.leads(wires);
        String ids = Supplies.names(leads.stream().map(Lead::id).toList());
        List<String> ends = way.names();
        String joined = ends.isEmpty() ? "a rail and 0V" : ends.get(0) + " and " + ends.get(ends.size() - 1);
        String volts = power.sources().stream()
                .filter(source -> power.ties().of(source.plus()) == tie)
                .findFirst()
                .map(source -> Supplies.name(at, source) + " works into it")
                .orElse("no source works into it yet");
        boolean live = !power.lifting(tie).isEmpty();
        Draft draft = Draft.of(
                        Severity.S1, "rail on 0V: " + joined + " are one net" + (ids.isEmpty() ? "" : " by " + ids))
                .about(leads.isEmpty() ? ends : leads.stream().map(Lead::id).toList())
                .path(way)
                .sum("0 ohm between " + joined + "; " + volts)
                .why(
                        live
                                ? "a short: the thinnest conductor on the way, or its fuse, burns the moment power is applied"
                                : "the unit stays dark, and the first supply that reaches it is shorted")
                .meter("packs out, " + (wires.isEmpty() ? "at the lead ends of " : "") + joined
                        + ": under 1 ohm now, open when right")
                .fix("take " + (ids.isEmpty() ? "the rail" : ids) + " off: + goes to +, 0V to 0V")
                .explains("P01", "P03", "P04", "P05", "P06", "P09", "P10", "S04", "S05", "S06", "T05", "T14", "T15");
        leads.forEach(draft::at);
        return live ? Shorted.explains(draft) : draft;
    }

    private static Trail over(Wiring wiring, Wire wire) {
        return new Trail(List.of(
                new Trail.Step(Trail.Kind.PIN, wiring.name(wire.fromPin())),
                new Trail.Step(Trail.Kind.LEAD, wire.lead().id()),
                new Trail.Step(Trail.Kind.PIN, wiring.name(wire.toPin()))));
    }

    /** From plus to minus of a source whose ends are one. */
    private static Optional<Trail> shortWay(PowerGraph power, int tie) {
        return power.lifting(tie).stream()
                .filter(source -> source.minus() >= 0 && power.ties().of(source.minus()) == tie)
                .findFirst()
                .flatMap(source -> power.trail(source.plus(), source.minus()));
    }

    private static Optional<Trail> anyWay(Situation at, PowerGraph power, int tie) {
        Optional<Integer> supply = IntStream.range(0, at.wiring().pinCount())
                .filter(pin -> PowerGraph.isSupply(at.wiring().pin(pin).role().or(PinRole.NONE)))
                .filter(pin -> power.ties().of(pin) == tie)
                .boxed()
                .findFirst();
        Optional<Integer> zero = zeroPins(at, power, tie).boxed().findFirst();
        return supply.isPresent() && zero.isPresent() ? power.trail(supply.get(), zero.get()) : Optional.empty();
    }
}
