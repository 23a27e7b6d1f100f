package ringout.check.power;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.power.PowerGraph;
import ringout.graph.signal.NetRoles;
import ringout.graph.signal.SignalWays;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * A unit without supply that is driven through a signal pin.
 *
 * <p>Why it matters: current flows through the protection of the input into the dead unit: it is half on, its light is dim, it does not
 * reset, and the input or the driver wears out.
 *
 * <p>Condition: in a state that takes its supply away, a unit has an input that a powered unit drives and that is not declared safe with
 * the power off. Bus transceivers are usually safe and are not looked at.
 *
 * <p>Does not see: a unit that has no supply in any state (P05), resistors in the line.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P08",
        name = "powered-through-signal",
        severity = Severity.S3,
        since = "0.1",
        needs = {"states", "whether an input may be driven with the power off"})
public final class PoweredThroughSignal implements Sound {
    private static final String SAFE = "whether it may be driven with the power off, of the input";

    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        SignalWays ways = SignalWays.of(at.circuit());
        SignalWays whole = SignalWays.of(at.whole());
        Gaps gaps = new Gaps();
        Map<Integer, Draft> drafts = new LinkedHashMap<>();
        roles.each(NetRoles.DRIVERS, net -> {
            if (!roles.any(net, NetRoles.RECEIVERS)) {
                return;
            }
            List<Integer> live = roles.pins(net, NetRoles.DRIVERS).stream()
                    .filter(pin -> ways.powered(at.wiring().unitOf(pin)))
                    .toList();
            for (int pin : roles.pins(net, NetRoles.RECEIVERS)) {
                int unit = at.wiring().unitOf(pin);
                if (!live.isEmpty() && !ways.powered(unit) && whole.powered(unit)) {
                    judge(at, out, gaps, drafts, live.get(0), pin);
                }
            }
        });
        drafts.values().forEach(out::finding);
        gaps.tell(out, datum -> new Gaps.Way("look it up in the maker's data", 5));
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, Map<Integer, Draft> drafts, int driver, int pin) {
        Datum<Boolean> safe = at.wiring().pin(pin).powerOffSafe();
        if (safe.is(true)) {
            out.looked();
        } else if (safe.isMissing()) {
            gaps.add(SAFE, at.wiring().name(pin));
        } else {
            int unit = at.wiring().unitOf(pin);
            Draft draft = drafts.computeIfAbsent(unit, key -> draft(at, driver, pin));
            Trail way = at.circuit().trail(driver, pin).orElse(Trail.NONE);
            for (Lead lead : Supplies.along(at, way)) {
                draft.at(lead);
            }
        }
    }

    private static Draft draft(Situation at, int driver, int pin) {
        int unit = at.wiring().unitOf(pin);
        String ref = at.directory().name(unit);
        String from = at.wiring().name(driver);
        boolean grave = at.directory().type(unit).ejector().is(true);
        List<String> inputs = PowerGraph.of(at.circuit()).consumersOf(unit).stream()
                .flatMap(consumer -> consumer.inputs().stream())
                .map(at.wiring()::name)
                .distinct()
                .toList();
        return Draft.of(
                        grave ? Severity.S2 : Severity.S3,
                        "powered through a signal: " + ref + " has no supply, but " + from + " drives "
                                + at.wiring().name(pin))
                .about(ref)
                .path(at.circuit().trail(driver, pin).orElse(Trail.NONE))
                .sum(ref + " off, " + from + " on, input not safe with the power off")
                .why(ref + " is half on through its input: its light is dim, it does not reset")
                .meter("in this state: volts at " + (inputs.isEmpty() ? ref : inputs.get(0)) + ", 0 V when right")
                .fix("take power from both or from none of them, or put a series resistor or buffer before "
                        + at.wiring().name(pin))
                .seen(at.directory().unit(unit));
    }
}
