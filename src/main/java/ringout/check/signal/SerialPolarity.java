package ringout.check.signal;

import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.PortSettings;
import ringout.graph.Trail;
import ringout.graph.signal.NetRoles;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.PortSetting;
import ringout.model.SerialPort;
import ringout.model.Unit;
import ringout.model.UnitKind;

/**
 * An inverted serial signal on a port that does not invert, or the reverse.
 *
 * <p>Why it matters: the port hears only errors; with a command receiver there is no arming and no stick response.
 *
 * <p>Condition: the port of the driving plug is inverted and the listening port is not set to inverted (or cannot be), or the other way
 * round. A device other than a command receiver counts as not inverted when nothing is said.
 *
 * <p>Does not see: a wrong protocol on the right polarity (A09).
 *
 * <p>Reference: inverted UART at 100 kbaud 8E2 as used by command receivers, open implementations; else common practice, no source.
 */
@CheckInfo(
        code = "S08",
        name = "serial-polarity",
        severity = Severity.S2,
        since = "0.1",
        needs = {"polarity of the command receiver", "polarity setting of its port"})
public final class SerialPolarity implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        roles.each(NetRoles.bits(PinRole.SERIAL_OUT), net -> {
            if (roles.has(net, PinRole.SERIAL_IN)) {
                int driver = roles.pins(net, NetRoles.bits(PinRole.SERIAL_OUT)).get(0);
                for (int receiver : roles.pins(net, NetRoles.bits(PinRole.SERIAL_IN))) {
                    look(at, out, driver, receiver);
                }
            }
        });
    }

    private static void look(Situation at, Outcomes out, int driver, int receiver) {
        Datum<Boolean> sent = sent(at, driver);
        boolean command =
                at.wiring().directory().type(at.wiring().unitOf(driver)).kind().is(UnitKind.COMMAND_RECEIVER);
        if (!sent.isKnown() && (command || sent instanceof Datum.Unknown)) {
            String unit = at.wiring().unit(driver).ref();
            out.cannotTell(
                    "polarity of the serial output of " + unit,
                    "measure the idle level: 3.3 V is plain, 0 V is inverted",
                    3,
                    unit);
            return;
        }
        Datum<Boolean> heard = heard(at, receiver);
        if ((sent.or(false) && !heard.isKnown()) || heard instanceof Datum.Unknown) {
            String port = plug(at, receiver);
            out.cannotTell("polarity setting of port " + port, "read the port settings", 4, port);
            return;
        }
        out.looked();
        if (!sent.or(false).equals(heard.or(false))) {
            out.finding(draft(at, driver, receiver, sent.or(false)));
        }
    }

    private static Datum<Boolean> sent(Situation at, int pin) {
        Datum<Boolean> set = PortSettings.of(
                        at.wiring().unit(pin), at.wiring().plug(pin).name())
                .filter(setting -> !setting.port().isEmpty())
                .map(PortSetting::inverted)
                .orElse(Datum.notAsked());
        return set.orElse(port(at, pin).map(SerialPort::inverted).orElse(Datum.notAsked()));
    }

    private static Datum<Boolean> heard(Situation at, int pin) {
        Optional<SerialPort> port = port(at, pin);
        Datum<Boolean> set = PortSettings.of(
                        at.wiring().unit(pin), at.wiring().plug(pin).name())
                .filter(setting -> !setting.port().isEmpty())
                .map(PortSetting::inverted)
                .orElse(Datum.notAsked());
        if (set.isKnown() || set instanceof Datum.Unknown) {
            return set;
        }
        Datum<Boolean> fixed = port.map(SerialPort::inverted).orElse(Datum.notAsked());
        boolean cannot = port.map(p -> p.canInvert().is(false)).orElse(false);
        return cannot && !fixed.isKnown() ? Datum.of(false) : fixed;
    }

    private static Optional<SerialPort> port(Situation at, int pin) {
        String plug = at.wiring().plug(pin).name();
        return at.directory().type(at.wiring().unitOf(pin)).serials().stream()
                .filter(port -> port.name().equals(plug))
                .findFirst();
    }

    private static String plug(Situation at, int pin) {
        return at.wiring().plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin));
    }

    private static Draft draft(Situation at, int driver, int receiver, boolean inverted) {
        String from = plug(at, driver);
        String to = plug(at, receiver);
        Trail way = at.circuit().trail(driver, receiver).orElse(Trail.NONE);
        Unit device = at.wiring().unit(driver);
        boolean command = at.directory().type(at.wiring().unitOf(driver)).kind().is(UnitKind.COMMAND_RECEIVER);
        Draft draft = Draft.of(
                        command || at.flightCritical(device.ref()) ? Severity.S2 : Severity.S3,
                        "serial polarity: " + from + " sends " + (inverted ? "inverted" : "plain") + ", port " + to
                                + " hears " + (inverted ? "plain" : "inverted"))
                .about(from, to)
                .path(way)
                .sum(inverted ? "inverted into a port that does not invert" : "plain into a port that inverts")
                .why("the port hears only errors: no arming, no response")
                .meter("idle level at " + at.wiring().name(receiver) + ": " + (inverted ? "0 V now" : "3.3 V now"))
                .fix("set port " + to + " to " + (inverted ? "inverted" : "plain")
                        + ", or move the lead to a port that can")
                .at(at.wiring().unit(receiver), plug(at, receiver) + " polarity");
        Leads.along(at, way).forEach(draft::seen);
        return draft;
    }
}
