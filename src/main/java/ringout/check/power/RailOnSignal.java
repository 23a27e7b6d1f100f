package ringout.check.power;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.graph.signal.References;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * A signal contact on a supply net whose voltage it does not stand.
 *
 * <p>Why it matters: the input or output burns the moment power is applied, often with the processor behind it.
 *
 * <p>Condition: a working source lifts the net of a signal pin to a voltage at rest, packs full, above the absolute maximum of
 * the pin. A sense input made to measure a supply tells its own, higher maximum.
 *
 * <p>Does not see: levels of signals (S03), a supply that comes over a resistor.
 *
 * <p>Reference: maker's data of the pin.
 */
@CheckInfo(
        code = "P03",
        name = "rail-on-signal-pin",
        severity = Severity.S1,
        since = "0.1",
        needs = {"highest voltage the pin stands", "voltage of the supply when packs are full"})
public final class RailOnSignal implements Check {
    private static final Set<PinRole> SIGNALS = EnumSet.range(PinRole.CAN_H, PinRole.RF);

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Gaps gaps = new Gaps();
        for (int pin = 0; pin < at.wiring().pinCount(); pin++) {
            boolean lifted = !power.lifting(power.ties().of(pin)).isEmpty();
            if (lifted
                    && SIGNALS.contains(at.wiring().pin(pin).role().or(PinRole.NONE))
                    && at.circuit().aboard(at.wiring().unitOf(pin))) {
                look(at, out, power, gaps, pin);
            }
        }
        gaps.tell(out, PowerData::way);
    }

    private static void look(Situation at, Outcomes out, PowerGraph power, Gaps gaps, int pin) {
        Volts volts = volts(at, power, pin);
        Datum<Double> most = at.wiring().pin(pin).maxV();
        if (most.isMissing()) {
            gaps.add(PowerData.HIGHEST, at.wiring().name(pin));
            return;
        }
        if (most.isNotApplicable()) {
            return;
        }
        double limit = most.or(0.0);
        List<Gap> missing = power.missing(pin).stream()
                .filter(gap -> !gap.datum().equals(PowerData.EMPTY_CELL))
                .toList();
        if (volts.high() <= limit) {
            out.looked();
        } else if (least(volts) > limit || missing.isEmpty()) {
            out.finding(draft(at, power, pin, volts, most));
        } else {
            gaps.add(missing);
        }
    }

    /** What the pin gets at least with packs full: a full pack is above its nominal voltage. */
    private static double least(Volts volts) {
        return Math.max(volts.low(), volts.nominal().orElse(volts.low()));
    }

    private static Volts volts(Situation at, PowerGraph power, int pin) {
        int zero = References.of(at.circuit()).zeroPin(pin);
        return power.between(pin, zero).or(() -> power.volts(pin)).orElse(Volts.POSITIVE);
    }

    private static Draft draft(Situation at, PowerGraph power, int pin, Volts volts, Datum<Double> most) {
        String name = at.wiring().name(pin);
        boolean open = Double.isInfinite(volts.high());
        double high = open ? least(volts) : volts.high();
        PowerSource source = power.lifting(power.ties().of(pin)).get(0);
        Trail way = power.trail(source.plus(), pin).orElse(Trail.NONE);
        List<Wire> meeting = at.wiring().wires().stream()
                .filter(wire -> wire.fromPin() == pin || wire.toPin() == pin)
                .filter(at.circuit()::mated)
                .toList();
        List<Lead> leads = Supplies.leads(meeting);
        Draft draft = Draft.of(
                        Severity.S1,
                        "rail on a signal pin: " + name + " stands " + Figures.of(most.or(0.0)) + " V and gets "
                                + (open ? "at least " : "up to ")
                                + Figures.of(high) + " V of " + Supplies.stack(at, source))
                .about(name)
                .path(way)
                .sum(Figures.of(high) + " V at rest above " + Figures.of(most.or(0.0)) + " V")
                .judged(
                        high,
                        most.or(0.0),
                        "V",
                        "data of " + at.wiring().unit(pin).type())
                .input(most)
                .why("the pin burns the moment power is applied, often with the processor behind it")
                .meter("unit unplugged, power on: volts at the lead of " + name + ", no more than "
                        + Figures.of(most.or(0.0)) + " V when right")
                .fix("take " + Supplies.names(leads.stream().map(Lead::id).toList()) + " off " + name
                        + (at.wiring().is(pin, PinRole.SENSE_IN)
                                ? ": it measures a lower voltage than this"
                                : ": the supply goes to a supply pin"))
                .explains("P01", "P05", "P06", "S01", "S03", "S04", "S06", "T05");
        leads.forEach(draft::at);
        return draft;
    }
}
