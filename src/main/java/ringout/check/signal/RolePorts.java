package ringout.check.signal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.signal.NetRoles;
import ringout.graph.signal.PulseLinks;
import ringout.graph.signal.Sides;
import ringout.model.Lead;
import ringout.model.OutputSetting;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.model.UnitKind;

/** Units joined to ports, or driven by outputs, that are named for a side of the aircraft. */
final class RolePorts {
    /** Roles of pins that say nothing of the place: buses carry an address, supplies and returns are all alike. */
    private static final long ANYWHERE = NetRoles.SUPPLIES
            | NetRoles.bits(
                    PinRole.CAN_H,
                    PinRole.CAN_L,
                    PinRole.SCL,
                    PinRole.SDA,
                    PinRole.ZERO_V,
                    PinRole.NONE,
                    PinRole.SHIELD);

    private final Situation at;
    private final Wiring wiring;
    private final Map<String, Misfit> misfits = new LinkedHashMap<>();

    /** A unit at a port named for another side. */
    private record Misfit(Unit unit, String port, String named, Unit owner, List<Lead> leads) {
        private boolean exchangedWith(Misfit other) {
            return owner.ref().equals(other.owner.ref())
                    && unit.type().equals(other.unit.type())
                    && !Sides.of(named).contradicts(RoleSwap.sides(other.unit))
                    && !Sides.of(other.named).contradicts(RoleSwap.sides(unit));
        }

        private String words() {
            return unit.ref() + " is " + unit.positionRole().or("") + " and is at " + port + " for " + named;
        }
    }

    RolePorts(Situation at) {
        this.at = at;
        this.wiring = at.wiring();
    }

    void look(Outcomes out) {
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            List<Plug> plugs = at.directory().type(unit).plugs();
            for (int plug = 0; plug < plugs.size() && at.circuit().aboard(unit); plug++) {
                if (plugs.get(plug).positionRole().isKnown()) {
                    plug(out, unit, plug, plugs.get(plug).positionRole().or(""));
                }
            }
        }
        PulseLinks.of(at.circuit()).forEach(link -> output(out, link));
        List<Misfit> open = new ArrayList<>(misfits.values());
        open.sort(Comparator.comparing(misfit -> misfit.unit().ref()));
        while (!open.isEmpty()) {
            Misfit first = open.remove(0);
            Optional<Misfit> partner =
                    open.stream().filter(first::exchangedWith).findFirst();
            partner.ifPresent(open::remove);
            out.finding(draft(first, partner));
        }
    }

    private void plug(Outcomes out, int unit, int plug, String named) {
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            Pin record = wiring.pin(pin);
            boolean tells = (NetRoles.bits(record.role().or(PinRole.NONE)) & ANYWHERE) == 0;
            for (int w : tells ? wiring.wiresAt(pin) : new int[0]) {
                Wire wire = wiring.wires().get(w);
                int far = wire.otherPin(pin);
                if (at.circuit().mated(wire) && !at.directory().isJoint(wiring.unitOf(far))) {
                    judge(
                            out,
                            wiring.unit(far),
                            wiring.plugName(unit, plug),
                            named,
                            wiring.unit(pin),
                            List.of(wire.lead()));
                }
            }
        }
    }

    private void output(Outcomes out, PulseLinks.Link link) {
        UnitKind kind = at.directory().type(wiring.unitOf(link.input())).kind().or(UnitKind.UNIT);
        boolean elsewhere = kind == UnitKind.ACTUATOR || kind == UnitKind.SPEED_CONTROLLER || kind == UnitKind.MOTOR;
        if (elsewhere || !wiring.unit(link.input()).positionRole().isKnown()) {
            return;
        }
        String function = PulseLinks.setting(wiring, link.output())
                .map(OutputSetting::function)
                .flatMap(datum -> datum.known())
                .orElse("");
        if (Sides.of(function).said()) {
            Unit owner = wiring.unit(link.output());
            String port = owner.ref() + " output " + PulseLinks.name(wiring, link.output());
            Unit driven = wiring.unit(link.input());
            List<Lead> leads = Sides.of(function).contradicts(RoleSwap.sides(driven))
                    ? Leads.along(
                            at, at.circuit().trail(link.output(), link.input()).orElse(Trail.NONE))
                    : List.of();
            judge(out, driven, port, function, owner, leads);
        }
    }

    private void judge(Outcomes out, Unit unit, String port, String named, Unit owner, List<Lead> leads) {
        Sides place = RoleSwap.sides(unit);
        if (place.said()) {
            out.looked();
            if (Sides.of(named).contradicts(place)) {
                misfits.putIfAbsent(unit.ref(), new Misfit(unit, port, named, owner, leads));
            }
        }
    }

    private Draft draft(Misfit first, Optional<Misfit> partner) {
        List<Misfit> all = Stream.concat(Stream.of(first), partner.stream()).toList();
        String words = String.join("; ", all.stream().map(Misfit::words).toList());
        TreeSet<String> leads = new TreeSet<>();
        all.forEach(misfit -> misfit.leads().forEach(lead -> leads.add(lead.id())));
        Draft draft = Draft.of(Severity.S2, "role swap: " + words)
                .about(all.stream().map(misfit -> misfit.unit().ref()).toList())
                .about("port")
                .sum(words)
                .why("every net is right, and yet one side acts for the other")
                .meter("work " + first.unit().ref() + " by hand or unplug it: see which side the ground station shows")
                .fix(
                        partner.isPresent()
                                ? "exchange " + String.join(" and ", leads) + " at "
                                        + first.owner().ref()
                                : "move " + String.join(" and ", leads) + " to the port for "
                                        + first.unit().positionRole().or(""));
        for (Misfit misfit : all) {
            misfit.leads().forEach(draft::at);
            draft.seen(misfit.unit());
            draft.cause(misfit.port() + " function");
        }
        return draft;
    }
}
