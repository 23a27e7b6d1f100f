package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Severity;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.Volts;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.Rail;
import ringout.model.UnitKind;

/**
 * Servos on one rail of which some do not stand what the rail gives, such as standard servos beside high-voltage ones.
 *
 * <p>Why it matters: one rail feeds them all. A voltage that suits the high-voltage servos burns the standard ones; one that suits the
 * standard ones leaves the others slow or still, and a surface stays where it is.
 *
 * <p>Condition: two or more servos hang on one supply (points tied by links, fuses and closed switches), and the voltage of the
 * supply at rest, from its lowest to its highest, does not lie inside the range of each of them. A servo is an actuator, or whatever takes
 * its supply from a plug that also has a pulse input.
 *
 * <p>Does not see: a servo alone on its rail and the sag under load (P04), the drop of the leads (P17).
 *
 * <p>Reference: maker's data of the servos; common practice, no source.
 */
@CheckInfo(
        code = "S17",
        name = "servo-rail-voltage",
        severity = Severity.S1,
        since = "0.2",
        needs = {"supply range of each servo", "lowest and highest voltage of the source"})
public final class ServoRailVoltage implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Map<Integer, List<Consumer>> rails = new TreeMap<>();
        for (Consumer consumer : power.consumers()) {
            if (isServo(at, consumer)
                    && at.circuit().aboard(consumer.unit())
                    && power.fed(consumer.plus())
                    && volts(power, consumer).isPresent()) {
                rails.computeIfAbsent(power.ties().of(consumer.plus()), key -> new ArrayList<>())
                        .add(consumer);
            }
        }
        Gaps gaps = new Gaps();
        for (List<Consumer> servos : rails.values()) {
            if (servos.size() > 1) {
                judge(at, out, gaps, servos);
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look it up in the maker's data", 5));
    }

    /** What a servo gets, when it is the right way round; the wrong way round has its own finding. */
    private static Optional<Volts> volts(PowerGraph power, Consumer servo) {
        return power.between(servo.plus(), servo.zero()).filter(volts -> volts.sign() == Volts.Sign.ABOVE);
    }

    private static boolean isServo(Situation at, Consumer consumer) {
        if (at.directory().type(consumer.unit()).kind().is(UnitKind.ACTUATOR)) {
            return !consumer.inputs().isEmpty();
        }
        for (int pin : consumer.inputs()) {
            Plug plug =
                    at.directory().type(consumer.unit()).plugs().get(at.wiring().plugIndex(pin));
            if (at.wiring().is(pin, PinRole.SUPPLY_IN)
                    && plug.pins().stream().anyMatch(other -> other.role().is(PinRole.PULSE_IN))) {
                return true;
            }
        }
        return false;
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, List<Consumer> servos) {
        PowerGraph power = PowerGraph.of(at.circuit());
        List<ServoRange> stand = new ArrayList<>();
        List<ServoRange> fail = new ArrayList<>();
        boolean sourceKnown = power.missing(servos.get(0).plus()).isEmpty();
        for (Consumer servo : servos) {
            ServoRange range = ServoRange.of(servo, volts(power, servo).orElse(Volts.ZERO));
            if (range.least().isMissing() || range.most().isMissing()) {
                gaps.add("supply range", at.directory().name(servo.unit()));
            }
            if (range.fails(sourceKnown)) {
                fail.add(range);
            } else if (!sourceKnown && !range.stands()) {
                gaps.add(power.missing(servo.plus()));
            } else if (range.least().isKnown() && range.most().isKnown()) {
                out.looked();
                stand.add(range);
            }
        }
        if (!fail.isEmpty()) {
            out.finding(ServoRailDraft.of(at, fail, stand));
        }
    }

    /**
     * What a servo takes and what it gets.
     *
     * @param servo the rail of the servo
     * @param volts what it gets at rest
     * @param least lowest voltage it takes in V
     * @param most highest voltage it takes in V
     */
    record ServoRange(Consumer servo, Volts volts, Datum<Double> least, Datum<Double> most) {
        static ServoRange of(Consumer servo, Volts volts) {
            return new ServoRange(
                    servo,
                    volts,
                    servo.limits().map(Rail::minV).orElse(Datum.notAsked()),
                    servo.limits().map(Rail::maxV).orElse(Datum.notAsked()));
        }

        /** Whether it gets too much; with unknown data of the source only when its nominal voltage is too much already. */
        boolean tooMuch(boolean sourceKnown) {
            double high = sourceKnown ? volts.high() : volts.nominal().orElse(volts.low());
            return most.isKnown() && high > most.or(0.0);
        }

        /** Whether it gets too little; with unknown data of the source only when its nominal voltage is too little already. */
        boolean tooLittle(boolean sourceKnown) {
            double low = sourceKnown ? volts.low() : volts.nominal().orElse(volts.high());
            return least.isKnown() && low < least.or(0.0);
        }

        boolean fails(boolean sourceKnown) {
            return tooMuch(sourceKnown) || tooLittle(sourceKnown);
        }

        boolean stands() {
            return !fails(true);
        }
    }
}
