package ringout.check.installation;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.signal.NetRoles;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.PinRole;
import ringout.model.Shield;

/**
 * A shield that is grounded at the wrong ends, or at none.
 *
 * <p>Why it matters: a floating shield is an aerial beside the wire it should protect; one on 0V at both ends of a slow signal carries
 * return current, and its voltage adds to the signal; one open end lets high frequency in.
 *
 * <p>Condition: no end grounded; or both ends on a slow signal that has a 0V wire of its own; or one end only on radio
 * frequency or a high-speed pair; or an analog signal whose shield is grounded at the sender alone. S3 when flight depends
 * on a unit of the lead, else S4.
 *
 * <p>Does not see: shields nobody lists, drain wires listed as conductors, how a shield is connected.
 *
 * <p>Reference: common practice, no source: slow signals at one end, the receiver; radio frequency and high speed at both.
 */
@CheckInfo(
        code = "M12",
        name = "shield-grounding",
        severity = Severity.S3,
        since = "0.3",
        needs = {"which ends of a shield are grounded"})
public final class ShieldGrounding implements Check {
    private static final long FAST = NetRoles.bits(PinRole.RF, PinRole.PAIR_P, PinRole.PAIR_N);
    private static final long ANALOG_OUT = NetRoles.bits(PinRole.SENSE_OUT, PinRole.VIDEO_OUT);
    private static final long SLOW = NetRoles.DRIVERS
            | NetRoles.RECEIVERS
            | NetRoles.bits(PinRole.CAN_H, PinRole.CAN_L, PinRole.SCL, PinRole.SDA);

    /** What the contacts at both ends of a lead carry, as sets of roles. */
    private record Ends(long from, long to) {
        private boolean any(long roles) {
            return ((from | to) & roles) != 0;
        }
    }

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        List<Lead> leads = at.aircraft().leads();
        for (int row = 0; row < leads.size(); row++) {
            Datum<Shield> shield = leads.get(row).shield();
            if (shield instanceof Datum.Unknown) {
                gaps.add("grounding of the shield", leads.get(row).id());
            } else if (shield.is(Shield.NONE)) {
                out.looked();
            } else if (shield.isKnown()) {
                look(at, out, row, shield.or(Shield.NONE));
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look at both ends of the lead", 2));
    }

    private static void look(Situation at, Outcomes out, int row, Shield shield) {
        Lead lead = at.aircraft().leads().get(row);
        Ends ends = ends(at, row);
        boolean fast = ends.any(FAST);
        boolean slow = !fast && ends.any(SLOW);
        if (shield == Shield.FLOATING) {
            out.finding(
                    draft(at, row, "floats", "a shield on no potential is an aerial beside the wire it should protect")
                            .fix("ground the shield of " + lead.id() + (fast ? " at both ends" : " at the receiver")));
        } else if (shield == Shield.BOTH && slow && ends.any(NetRoles.bits(PinRole.ZERO_V))) {
            out.finding(draft(
                            at,
                            row,
                            "is grounded at both ends beside a 0V wire",
                            "return current takes the shield, and its voltage adds to the signal")
                    .fix("open the shield of " + lead.id() + " at the sender"));
        } else if (shield != Shield.BOTH && fast) {
            out.finding(
                    draft(at, row, "is grounded at one end only", "at high frequency the open end lets everything in")
                            .fix("ground the shield of " + lead.id() + " at both ends"));
        } else if (slow && sender(ends, shield)) {
            out.finding(draft(
                            at,
                            row,
                            "of an analog signal is grounded at the sender",
                            "what the shield picks up flows past the receiver's own 0V")
                    .fix("ground the shield of " + lead.id() + " at the receiver instead"));
        } else {
            out.looked();
        }
    }

    /** Whether an analog signal has its shield at the end that drives it. */
    private static boolean sender(Ends ends, Shield shield) {
        boolean fromDrives = (ends.from() & ANALOG_OUT) != 0 && (ends.to() & ANALOG_OUT) == 0;
        boolean toDrives = (ends.to() & ANALOG_OUT) != 0 && (ends.from() & ANALOG_OUT) == 0;
        return (shield == Shield.FROM && fromDrives) || (shield == Shield.TO && toDrives);
    }

    private static Ends ends(Situation at, int row) {
        long from = 0;
        long to = 0;
        for (Wire wire : RowWires.of(at, row)) {
            from |= at.wiring().role(wire.fromPin()).map(NetRoles::bits).orElse(0L);
            to |= at.wiring().role(wire.toPin()).map(NetRoles::bits).orElse(0L);
        }
        return new Ends(from, to);
    }

    private static Draft draft(Situation at, int row, String how, String why) {
        Lead lead = at.aircraft().leads().get(row);
        boolean critical = at.flightCritical(unit(at, row, true)) || at.flightCritical(unit(at, row, false));
        return Draft.of(critical ? Severity.S3 : Severity.S4, "shield of " + lead.id() + " " + how)
                .about(lead.id())
                .at(lead)
                .input(lead.shield())
                .sum("shield grounded: " + lead.shield().or(Shield.NONE).word())
                .why(why)
                .meter("both plugs pulled: shield to 0V of either plug, open or near 0 ohm");
    }

    private static String unit(Situation at, int row, boolean from) {
        Site site = from ? at.wiring().from(row) : at.wiring().to(row);
        int unit = site instanceof Site.OnPlug on ? on.unit() : site instanceof Site.OnPin pin ? pin.unit() : -1;
        return unit < 0 ? "" : at.directory().name(unit);
    }
}
