package ringout.check.signal;

import java.util.Locale;
import java.util.regex.Pattern;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.graph.signal.NetRoles;
import ringout.model.Datum;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.SafeDefault;
import ringout.model.UnitKind;

/**
 * An arming, kill or ejector input that is open and not safe when open.
 *
 * <p>Why it matters: an open input reads anything; it can arm the motors, or release the parachute on the bench.
 *
 * <p>Condition: an input with a safe default on its record is joined to nothing aboard, and that default is not "safe". Inputs of an
 * ejector, and inputs called arm, kill, eject or safety, are asked about when nobody wrote down what they do when open. A plug
 * pulled in a state leaves its input open in that state.
 *
 * <p>Does not see: a switch that is joined and stands the wrong way.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "S21",
        name = "floating-safety-input",
        severity = Severity.S2,
        since = "0.1",
        needs = {"what each safety input does when left open"})
public final class FloatingSafetyInput implements Check {
    private static final Pattern SAFETY = Pattern.compile(".*\\b(dis)?(arm|kill|eject|safety|release).*");
    private static final long NOTHING = NetRoles.bits(PinRole.NONE, PinRole.PASSIVE, PinRole.SHIELD);

    @Override
    public void look(Situation at, Outcomes out) {
        Wiring wiring = at.wiring();
        Gaps gaps = new Gaps();
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            Pin record = wiring.pin(pin);
            boolean asked = !(record.safeDefault() instanceof Datum.NotAsked);
            if ((asked || suspect(at, pin, record)) && at.circuit().aboard(wiring.unitOf(pin))) {
                look(at, out, pin, record.safeDefault(), gaps);
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look it up in the maker's data; until then take it for unsafe", 5));
    }

    /** An input that looks like a safety input though its type does not say so. */
    private static boolean suspect(Situation at, int pin, Pin record) {
        PinRole role = record.role().or(PinRole.NONE);
        boolean input = role == PinRole.LOGIC_IN || role == PinRole.PULSE_IN;
        if (!input || at.wiring().wiresAt(pin).length > 0) {
            return false;
        }
        int unit = at.wiring().unitOf(pin);
        boolean ejector = at.directory().type(unit).ejector().is(true)
                || at.directory().type(unit).kind().is(UnitKind.EJECTOR);
        return ejector
                || SAFETY.matcher(record.name().or("").toLowerCase(Locale.ROOT)).matches();
    }

    private static void look(Situation at, Outcomes out, int pin, Datum<SafeDefault> open, Gaps gaps) {
        if (open.isNotApplicable()) {
            return;
        }
        if (open.is(SafeDefault.SAFE) || joined(at, pin)) {
            out.looked();
        } else if (open.isMissing()) {
            gaps.add("safe default", at.wiring().name(pin));
        } else {
            out.finding(draft(at, pin));
        }
    }

    /** Whether a contact of another unit that does something is on its net. */
    private static boolean joined(Situation at, int pin) {
        Wiring wiring = at.wiring();
        for (int other : at.circuit().nets().pins(at.circuit().nets().of(pin))) {
            int unit = wiring.unitOf(other);
            boolean does = wiring.role(other)
                    .map(role -> (NetRoles.bits(role) & NOTHING) == 0)
                    .orElse(true);
            if (unit != wiring.unitOf(pin) && does && at.circuit().aboard(unit)) {
                return true;
            }
        }
        return false;
    }

    private static Draft draft(Situation at, int pin) {
        Wiring wiring = at.wiring();
        String name = wiring.name(pin);
        String plug = wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin));
        Draft draft = Draft.of(Severity.S2, "floating safety input: " + name + " is open, and open is not safe")
                .about(name)
                .sum("units joined to " + name + ": 0; safe default: unsafe")
                .why("an open input reads anything: it can arm or release by itself")
                .meter("power off, propellers off, ejector pinned: " + name
                        + " to 0V and to the rail, open to both now")
                .fix("join " + name + " to its switch, or fit a plug that holds it safe")
                .cause(plug + " open")
                .at(wiring.unit(pin), "safety input " + name);
        for (int w : wiring.wiresAt(pin)) {
            draft.at(wiring.wires().get(w).lead());
        }
        return draft;
    }
}
