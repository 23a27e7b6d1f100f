package ringout.check.signal;

import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wiring;
import ringout.graph.signal.NetRoles;
import ringout.model.ActiveLevel;
import ringout.model.Datum;
import ringout.model.Drive;
import ringout.model.LeadKind;
import ringout.model.Pin;
import ringout.model.PinRole;

/**
 * A trigger or feedback contact that means "now" at the other level than the input expects, or whose isolation does not fit.
 *
 * <p>Why it matters: every picture is taken or counted at the wrong edge, twice or not at all, and the positions of the pictures are
 * wrong by the exposure time.
 *
 * <p>Condition: on a trigger lead the level that means "now" differs between output and input; or the output is an isolated contact
 * (optocoupler, relay) and the input has no pull-up, so it never goes high; or the input is an isolated one that must be driven
 * with current, and the output only pulls to 0V.
 *
 * <p>Does not see: voltages, which S03 judges on every net (5 V of feedback into a 3.3 V input is S1 there); the length of the pulse.
 *
 * <p>Reference: maker's data of both; common practice, no source.
 */
@CheckInfo(
        code = "S23",
        name = "trigger-mismatch",
        severity = Severity.S3,
        since = "0.1",
        needs = {"level that means now at both ends of each trigger lead", "isolation of both ends"})
public final class TriggerMismatch implements Check {
    private static final long OUT = NetRoles.bits(PinRole.LOGIC_OUT);
    private static final long IN = NetRoles.bits(PinRole.LOGIC_IN);

    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        Gaps gaps = new Gaps();
        roles.each(IN, net -> {
            if (!roles.any(net, OUT)) {
                return;
            }
            for (int output : roles.pins(net, OUT)) {
                for (int input : roles.pins(net, IN)) {
                    if (trigger(at, output) || trigger(at, input)) {
                        polarity(at, out, output, input, gaps);
                        isolation(at, out, output, input, gaps);
                    }
                }
            }
        });
        gaps.tell(out, datum -> new Gaps.Way("look it up in the maker's data, or fire once with a scope on it", 5));
    }

    private static boolean trigger(Situation at, int pin) {
        if (at.wiring().pin(pin).active().isKnown()) {
            return true;
        }
        for (int w : at.wiring().wiresAt(pin)) {
            if (at.wiring().wires().get(w).lead().kind().is(LeadKind.TRIGGER)) {
                return true;
            }
        }
        return false;
    }

    private static void polarity(Situation at, Outcomes out, int output, int input, Gaps gaps) {
        Datum<ActiveLevel> sent = at.wiring().pin(output).active();
        Datum<ActiveLevel> wanted = at.wiring().pin(input).active();
        if (sent.isMissing()) {
            gaps.add("level that means now", at.wiring().name(output));
        }
        if (wanted.isMissing()) {
            gaps.add("level that means now", at.wiring().name(input));
        }
        if (sent.isKnown() && wanted.isKnown()) {
            out.looked();
            String is = sent.or(ActiveLevel.HIGH).word();
            String should = wanted.or(ActiveLevel.HIGH).word();
            if (!is.equals(should)) {
                String from = at.wiring().name(output);
                out.finding(draft(
                                at,
                                output,
                                input,
                                "polarity",
                                from + " means now when " + is + ", "
                                        + at.wiring().name(input) + " when " + should)
                        .fix("set " + from + " or " + at.wiring().name(input) + " to the other polarity")
                        .meter("rest level at " + from + ": " + (sent.is(ActiveLevel.HIGH) ? "0 V" : "high")
                                + " now, the other way round when right"));
            }
        }
    }

    private static void isolation(Situation at, Outcomes out, int output, int input, Gaps gaps) {
        Pin from = at.wiring().pin(output);
        Pin to = at.wiring().pin(input);
        if (from.isolated().isMissing()) {
            gaps.add("isolation", at.wiring().name(output));
        }
        if (to.isolated().isMissing()) {
            gaps.add("isolation", at.wiring().name(input));
        }
        if (!from.isolated().isMissing() && !to.isolated().isMissing()) {
            out.looked();
        }
        if (from.isolated().is(true) && to.pulledUp().isMissing()) {
            gaps.add("pull-up", at.wiring().name(input));
        } else if (from.isolated().is(true) && !to.pulledUp().is(true)) {
            String words = at.wiring().name(output) + " is an isolated contact, "
                    + at.wiring().name(input) + " has no pull-up";
            out.finding(draft(at, output, input, "contact", words)
                    .fix("fit a pull-up to the supply of "
                            + at.wiring().unit(input).ref() + " at "
                            + at.wiring().name(input))
                    .meter(at.wiring().name(input) + " to 0V at rest: about 0 V now, the supply when right"));
        }
        if (to.isolated().is(true) && from.drive().is(Drive.OPEN_DRAIN)) {
            String words = at.wiring().name(input) + " is isolated and must be driven with current, "
                    + at.wiring().name(output) + " only pulls to 0V";
            out.finding(draft(at, output, input, "current", words)
                    .fix("feed the input of " + at.wiring().unit(input).ref() + " from its rail and let "
                            + at.wiring().name(output) + " pull it, or fit a driver")
                    .meter("current into " + at.wiring().name(input) + " while triggered: none now"));
        } else if (to.isolated().is(true) && from.drive().isMissing()) {
            gaps.add("how it drives", at.wiring().name(output));
        }
    }

    private static Draft draft(Situation at, int output, int input, String what, String words) {
        Wiring wiring = at.wiring();
        Trail way = at.circuit().trail(output, input).orElse(Trail.NONE);
        Draft draft = Draft.of(Severity.S3, "trigger mismatch: " + words)
                .about(wiring.name(output), wiring.name(input), what)
                .path(way)
                .sum(words)
                .source("data of " + wiring.unit(output).type() + " and "
                        + wiring.unit(input).type())
                .why("pictures are taken or counted at the wrong edge, twice or not at all")
                .seen(wiring.unit(output))
                .seen(wiring.unit(input));
        Leads.along(at, way).forEach(draft::at);
        return draft;
    }
}
