package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Severity;
import ringout.graph.signal.SerialLinks;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.UnitKind;

/**
 * A serial port that is set for another device than the one it is joined to.
 *
 * <p>Why it matters: the leads fit, every net is right, and yet the two do not understand each other. Two equal serial leads
 * exchanged look perfect to a meter.
 *
 * <p>Condition: the protocol set at the port is not the one the device needs or is set to, or the baud rates of the two differ.
 * Two devices each at the port set for the other are one finding. S2 for command receiver, satellite receiver and speed
 * controller, else S3.
 *
 * <p>Does not see: settings of bus ports (A04, A05), polarity (S08), who sends to whom (S07).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "A09",
        name = "port-function",
        severity = Severity.S2,
        since = "0.1",
        needs = {"protocol and baud rate set at each serial port", "protocol each device needs"})
public final class PortFunction implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<PortMismatch> wrong = new ArrayList<>();
        Gaps gaps = new Gaps();
        for (SerialLinks.Link link : SerialLinks.of(at.circuit())) {
            look(at, out, link, wrong, gaps);
        }
        while (!wrong.isEmpty()) {
            PortMismatch first = wrong.remove(0);
            Optional<PortMismatch> partner =
                    wrong.stream().filter(first::exchangedWith).findFirst();
            partner.ifPresent(wrong::remove);
            out.finding(partner.map(other -> first.exchanged(at, other)).orElseGet(() -> first.draft(at)));
        }
        gaps.tell(
                out,
                datum -> datum.endsWith("set")
                        ? new Gaps.Way("read it from the parameter list of the unit", 2)
                        : new Gaps.Way("look it up in the maker's data of the device", 3));
    }

    private static void look(Situation at, Outcomes out, SerialLinks.Link link, List<PortMismatch> wrong, Gaps gaps) {
        Datum<String> set = SerialLinks.protocol(at.wiring(), link.port());
        Datum<String> wanted = SerialLinks.protocol(at.wiring(), link.device());
        String port = SerialLinks.name(at.wiring(), link.port());
        String device = SerialLinks.name(at.wiring(), link.device());
        if (set.isMissing()) {
            gaps.add("protocol set", port);
        }
        if (wanted.isMissing()) {
            gaps.add("protocol needed", device);
        }
        if (set.isMissing() || wanted.isMissing()) {
            return;
        }
        if (set.isKnown() && wanted.isKnown() && !set.or("").equalsIgnoreCase(wanted.or(""))) {
            wrong.add(new PortMismatch(link, set.or(""), wanted.or(""), "", severity(at, link)));
            return;
        }
        Datum<Double> here = baud(at, link.port());
        Datum<Double> there = baud(at, link.device());
        if (here.isKnown() && there.isKnown()) {
            out.looked();
            if (Double.compare(here.or(0.0), there.or(0.0)) != 0) {
                String own = ringout.model.shape.Scalars.number(here.or(0.0)) + " baud";
                String other = ringout.model.shape.Scalars.number(there.or(0.0)) + " baud";
                wrong.add(new PortMismatch(link, own, other, set.or(""), severity(at, link)));
            }
        } else if (here.isMissing() || there.isMissing()) {
            if (here.isMissing()) {
                gaps.add("baud rate set", port);
            }
            if (there.isMissing()) {
                gaps.add("baud rate set", device);
            }
        } else {
            out.looked();
        }
    }

    private static Datum<Double> baud(Situation at, SerialLinks.Side side) {
        return SerialLinks.setting(at.wiring(), side).map(PortSetting::baud).orElse(Datum.notAsked());
    }

    private static Severity severity(Situation at, SerialLinks.Link link) {
        UnitKind kind = at.directory().type(link.device().unit()).kind().or(UnitKind.UNIT);
        return switch (kind) {
            case COMMAND_RECEIVER, SATELLITE_RECEIVER, SPEED_CONTROLLER -> Severity.S2;
            default -> Severity.S3;
        };
    }
}
