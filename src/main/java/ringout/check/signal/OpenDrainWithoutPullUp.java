package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.signal.NetRoles;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.Drive;
import ringout.model.Pin;
import ringout.model.PinRole;

/**
 * An open-drain line without a pull-up, or a push-pull output on a shared open-drain line.
 *
 * <p>Why it matters: without a pull-up the line never goes high; a push-pull output on it shorts against every other driver.
 *
 * <p>Condition: a net with an open-drain output and no pin with a pull-up; or open-drain and push-pull outputs on one net. An I2C
 * line takes its pull-ups from the bus ports on it.
 *
 * <p>Does not see: the value of the pull-up (S18).
 *
 * <p>Reference: I2C-bus specification (open-drain lines need a pull-up); common practice.
 */
@CheckInfo(
        code = "S20",
        name = "open-drain-without-pull-up",
        severity = Severity.S3,
        since = "0.1",
        needs = {"pull-up of each open-drain line"})
public final class OpenDrainWithoutPullUp implements Check {
    private static final long LINES = NetRoles.bits(PinRole.SCL, PinRole.SDA);

    @Override
    public void look(Situation at, Outcomes out) {
        NetRoles roles = NetRoles.of(at.circuit());
        roles.each(NetRoles.DRIVERS | LINES, net -> {
            List<Integer> lines = roles.pins(net, LINES);
            List<Integer> drains = drivers(at, roles.pins(net, NetRoles.DRIVERS), Drive.OPEN_DRAIN);
            boolean shared = lines.stream().map(at.wiring()::unitOf).distinct().count() > 1;
            if (shared || wired(at, drains)) {
                List<Integer> all = new ArrayList<>(lines);
                all.addAll(drains);
                pull(at, out, roles, net, all);
            }
            if (!drains.isEmpty()) {
                List<Integer> pushing = drivers(at, roles.pins(net, NetRoles.DRIVERS), Drive.PUSH_PULL);
                pushing.forEach(pin -> out.finding(shared(at, pin, drains)));
            }
        });
    }

    private static boolean wired(Situation at, List<Integer> pins) {
        return pins.stream().anyMatch(pin -> Leads.wired(at, pin));
    }

    private static List<Integer> drivers(Situation at, List<Integer> pins, Drive drive) {
        return pins.stream()
                .filter(pin -> at.wiring().pin(pin).drive().is(drive))
                .toList();
    }

    private static void pull(Situation at, Outcomes out, NetRoles roles, int net, List<Integer> pins) {
        List<Integer> everyone = new ArrayList<>(pins);
        everyone.addAll(roles.pins(net, NetRoles.RECEIVERS));
        if (everyone.stream().anyMatch(pin -> pulled(at, pin).is(true))) {
            out.looked();
            return;
        }
        List<String> open = everyone.stream()
                .filter(pin -> pulled(at, pin).isMissing())
                .map(at.wiring()::name)
                .toList();
        if (open.isEmpty()) {
            out.finding(bare(at, pins));
        } else {
            out.cannotTell(
                    "pull-up at " + String.join(", ", open),
                    "power off: measure from the line to the supply of the unit",
                    4,
                    open.toArray(new String[0]));
        }
    }

    private static Datum<Boolean> pulled(Situation at, int pin) {
        Pin record = at.wiring().pin(pin);
        if (!at.wiring().is(pin, PinRole.SCL) && !at.wiring().is(pin, PinRole.SDA)) {
            return record.pulledUp();
        }
        Datum<Double> ohm = record.inside()
                .known()
                .flatMap(port -> at.directory().layout(at.wiring().unitOf(pin)).port(port))
                .map(BusPort::pullUpOhm)
                .orElse(Datum.notAsked());
        if (ohm.isKnown()) {
            return Datum.of(true);
        }
        return ohm.isNotApplicable() ? Datum.of(false) : record.pulledUp();
    }

    private static Draft bare(Situation at, List<Integer> pins) {
        List<String> names = pins.stream().map(at.wiring()::name).toList();
        Draft draft = Draft.of(Severity.S3, "open-drain line without a pull-up: " + String.join(", ", names))
                .about(names)
                .sum("0 pull-ups on the line, at least one is right")
                .source("I2C-bus specification; common practice")
                .why("the line never goes high")
                .meter("power on, bus idle: about 0 V on the line, the supply voltage when right")
                .fix("fit a pull-up to the rail at " + names.get(0));
        pins.forEach(pin -> draft.seen(at.wiring().unit(pin)));
        pins.stream()
                .filter(pin -> at.wiring().is(pin, PinRole.SCL) || at.wiring().is(pin, PinRole.SDA))
                .forEach(pin ->
                        draft.cause("pull-ups of " + at.wiring().unit(pin).ref() + " "
                                + at.wiring().pin(pin).inside().or("")));
        return draft;
    }

    private static Draft shared(Situation at, int pin, List<Integer> drains) {
        String name = at.wiring().name(pin);
        String others = String.join(", ", drains.stream().map(at.wiring()::name).toList());
        return Draft.of(Severity.S3, "push-pull output " + name + " on the open-drain line of " + others)
                .about(name)
                .path(at.circuit().trail(pin, drains.get(0)).orElse(Trail.NONE))
                .sum("push-pull " + name + " against open-drain " + others)
                .source("I2C-bus specification; common practice")
                .why("it drives high while another pulls low: both heat")
                .fix("set " + name + " to open-drain, or take it off the line")
                .seen(at.wiring().unit(pin));
    }
}
