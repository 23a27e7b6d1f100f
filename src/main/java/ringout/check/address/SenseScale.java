package ringout.check.address;

import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.Unit;
import ringout.model.UnitKind;
import ringout.model.UnitType;

/**
 * A power monitor whose scale is set to another value than its type has.
 *
 * <p>Why it matters: the voltage or the current shown is wrong all the time, and the low-battery action comes too late or never.
 *
 * <p>Formula: deviation of the configured scale from that of the monitor type, in percent; more than 2 % of voltage or 5 % of current.
 * S2 when a protection runs through the monitor, else S3.
 *
 * <p>Does not see: a monitor that sends numbers over a bus, which has no scale to set; drift of the monitor itself.
 *
 * <p>Reference: limits are judgement.
 */
@CheckInfo(
        code = "A15",
        name = "sense-scale",
        severity = Severity.S3,
        since = "0.1",
        needs = {"scale of the monitor type", "scale as configured"})
public final class SenseScale implements Check {
    private static final double PERCENT = 100;

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            if (at.circuit().aboard(unit)) {
                UnitType type = at.directory().type(unit);
                Unit record = at.directory().unit(unit);
                boolean analog = type.kind().is(UnitKind.MONITOR) && senses(at.wiring(), unit);
                look(at, out, record, "voltage", type.voltScale(), record.voltScaleSet(), analog, gaps);
                look(at, out, record, "current", type.ampScale(), record.ampScaleSet(), analog, gaps);
            }
        }
        gaps.tell(
                out,
                datum -> datum.startsWith("configured")
                        ? new Gaps.Way("read it from the parameter list", 1)
                        : new Gaps.Way("look it up in the maker's data, or hold it against a meter", 5));
    }

    private static boolean senses(Wiring wiring, int unit) {
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (wiring.is(pin, PinRole.SENSE_OUT)) {
                return true;
            }
        }
        return false;
    }

    private static void look(
            Situation at,
            Outcomes out,
            Unit unit,
            String what,
            Datum<Double> real,
            Datum<Double> set,
            boolean analog,
            Gaps gaps) {
        if (!analog && !real.isKnown() && !set.isKnown()) {
            return;
        }
        if (real.isMissing()) {
            gaps.add("true " + what + " scale", unit.type());
        }
        if (set.isMissing()) {
            gaps.add("configured " + what + " scale", unit.ref());
        }
        if (real.isKnown() && set.isKnown() && real.or(0.0) != 0) {
            Threshold limit = at.limit(what.equals("voltage") ? Thresholds.SCALE_VOLTAGE : Thresholds.SCALE_CURRENT);
            double off = PERCENT * (set.or(0.0) / real.or(1.0) - 1);
            out.looked();
            if (Math.abs(off) > limit.value()) {
                out.finding(draft(at, unit, what, real, set, off, limit));
            }
        }
    }

    private static Draft draft(
            Situation at, Unit unit, String what, Datum<Double> real, Datum<Double> set, double off, Threshold limit) {
        boolean acts = at.aircraft().functions().stream()
                .anyMatch(function ->
                        function.protection().is(true) && function.chain().contains(unit.ref()));
        String scales = Figures.of(set.or(0.0)) + " instead of " + Figures.of(real.or(0.0));
        String shown = Figures.of(Math.abs(off)) + " % " + (off > 0 ? "too high" : "too low");
        return Draft.of(
                        acts ? Severity.S2 : Severity.S3,
                        "sense scale: " + what + " scale of " + unit.ref() + " is set to " + scales)
                .about(unit.ref(), what + " scale")
                .at(unit, what + " scale")
                .input(real)
                .input(set)
                .sum("set / type - 1 = " + Figures.of(off) + " %: " + what + " shown " + shown)
                .judged(Math.abs(off), limit.value(), "%", limit.source())
                .why(
                        acts
                                ? "a protection rests on it: it comes too early or too late"
                                : "what is shown of the battery is wrong all the time")
                .meter(
                        what.equals("voltage")
                                ? "pack at rest: meter against the ground station"
                                : "hover current against a clamp meter, or charge back in against charge counted")
                .fix("set the " + what + " scale of " + unit.ref() + " to " + Figures.of(real.or(0.0)));
    }
}
