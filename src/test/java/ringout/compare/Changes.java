package ringout.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import ringout.compare.difference.Kind;
import ringout.graph.Site;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Lead;
import ringout.model.Unit;
import ringout.model.shape.Scalars;

/** Random changes of an aircraft, each with the one difference that must be found. */
final class Changes {
    /** A change: its edits, and what must come of them. */
    record Change(List<String> edits, Kind kind, String object) {}

    private static final List<BiFunction<Changes, String, Optional<Change>>> OF_LEADS = List.of(
            (at, id) -> at.set(id, "lengthMm", "1234.5", Kind.LENGTH),
            (at, id) -> at.set(id, "routeMm", "1233.5", Kind.LENGTH),
            (at, id) -> at.set(id, "awg", "19", Kind.SIZE),
            (at, id) -> at.set(id, "colours", at.colours(id), Kind.COLOUR),
            (at, id) -> at.set(id, "fuseA", "4.25", Kind.FUSE),
            (at, id) -> at.set(id, "fromFamily", "odd plug", Kind.CONNECTOR),
            (at, id) -> at.set(id, "toKey", "odd key", Kind.CONNECTOR),
            (at, id) -> at.set(id, "sleeve", "odd sleeve", Kind.MAKE),
            (at, id) -> at.set(id, "insulationC", "?", Kind.MAKE),
            (at, id) -> at.set(id, "toLabel", "odd label", Kind.LABEL),
            (at, id) -> at.set(id, "matings", "77", Kind.RECORD),
            (at, id) -> Optional.of(new Change(List.of("set leads[" + id + "].id Z" + id), Kind.LABEL, id)),
            (at, id) -> Optional.of(new Change(List.of("remove leads[" + id + "]"), Kind.LEAD_GONE, id)),
            Changes::twin,
            Changes::crossed,
            Changes::wireGone,
            Changes::moved,
            Changes::exchanged);
    private static final List<BiFunction<Changes, String, Optional<Change>>> OF_UNITS = List.of(
            (at, ref) -> at.unit(ref, "serial", "S-77", Kind.SERIAL),
            (at, ref) -> at.unit(ref, "firmware", "9.9.9", Kind.FIRMWARE),
            (at, ref) -> at.unit(ref, "zone", "odd zone", Kind.POSITION),
            (at, ref) -> at.unit(ref, "xMm", "777", Kind.POSITION),
            (at, ref) -> at.unit(ref, "headingDeg", "177", Kind.ORIENTATION),
            (at, ref) -> at.unit(ref, "what", "odd thing", Kind.LABEL),
            (at, ref) -> at.unit(ref, "restV", "7.7", Kind.READ_OF_UNIT),
            (at, ref) -> at.unit(ref, "asRead.address", "77", Kind.READ_OF_UNIT),
            (at, ref) -> at.unit(ref, "derating", "0.77", Kind.SETTING),
            (at, ref) -> at.port(ref, "address", "77", Kind.ADDRESS),
            (at, ref) -> at.port(ref, "rateKbit", "777", Kind.RATE),
            (at, ref) -> at.port(ref, "terminator", "?", Kind.TERMINATOR));
    private static final List<Change> OF_THE_REST = List.of(
            rest("add joints {\"id\":\"J77\",\"kind\":\"splice\"}", Kind.JOINT, "J77"),
            rest("add buses {\"name\":\"CAN77\",\"kind\":\"can\"}", Kind.BUS, "buses"),
            rest("set airframe.coldestC -7", Kind.AIRFRAME, "airframe"),
            rest("add airframe.zones {\"name\":\"odd\"}", Kind.AIRFRAME, "airframe"),
            rest("add states {\"name\":\"on the stand\",\"bench\":true}", Kind.STATE, "states"),
            rest("add functions {\"name\":\"odd\",\"chain\":[\"FC\"]}", Kind.FUNCTION, "functions"),
            rest("set project.railColour VT", Kind.RULES, "project"),
            rest("add waivers {\"finding\":\"T07:X\"}", Kind.WAIVER, "waivers"),
            rest("add record.readings {\"where\":\"FC-C2\",\"quantity\":\"ohm\",\"value\":60}", Kind.READING, "record"),
            rest("add record.signatures {\"item\":\"H1\",\"by\":\"AB\"}", Kind.RECORD, "record"),
            rest("set record.flightHours 77", Kind.RECORD, "record"));

    private final Aircraft aircraft;
    private final Wiring wiring;
    private final Random random;
    private final Set<String> used = new HashSet<>();

    Changes(Aircraft aircraft, Random random) {
        this.aircraft = aircraft;
        this.wiring = Wiring.of(aircraft);
        this.random = random;
    }

    private static Change rest(String edit, Kind kind, String object) {
        return new Change(List.of(edit), kind, object);
    }

    /** So many changes, no two of one row. */
    List<Change> some(int count) {
        List<Change> all = new ArrayList<>();
        while (all.size() < count) {
            one().filter(change -> !all.contains(change)).ifPresent(all::add);
        }
        return all;
    }

    private Optional<Change> one() {
        int part = random.nextInt(10);
        if (part == 0) {
            return Optional.of(OF_THE_REST.get(random.nextInt(OF_THE_REST.size())));
        }
        if (part < 4) {
            Unit unit = aircraft.units().get(random.nextInt(aircraft.units().size()));
            return used.add(unit.ref())
                    ? OF_UNITS.get(random.nextInt(OF_UNITS.size())).apply(this, unit.ref())
                    : Optional.empty();
        }
        String id = anyLead().id();
        return used.add(id) ? OF_LEADS.get(random.nextInt(OF_LEADS.size())).apply(this, id) : Optional.empty();
    }

    private Lead anyLead() {
        return aircraft.leads().get(random.nextInt(aircraft.leads().size()));
    }

    private Lead lead(String id) {
        return aircraft.leads().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private List<Wire> wires(String id) {
        return wiring.wires().stream()
                .filter(wire -> wire.lead().id().equals(id))
                .toList();
    }

    private Optional<Change> set(String id, String field, String value, Kind kind) {
        return Optional.of(new Change(List.of("set leads[" + id + "]." + field + " " + value), kind, id));
    }

    private Optional<Change> unit(String ref, String field, String value, Kind kind) {
        return Optional.of(new Change(List.of("set units[" + ref + "]." + field + " " + value), kind, ref));
    }

    private Optional<Change> port(String ref, String field, String value, Kind kind) {
        return aircraft.units().stream()
                .filter(unit -> unit.ref().equals(ref))
                .flatMap(unit -> unit.ports().stream())
                .filter(port -> !port.port().isEmpty()
                        && (!field.equals("terminator") || port.terminator().isKnown()))
                .findFirst()
                .map(port -> new Change(
                        List.of("set units[" + ref + "].ports[" + port.port() + "]." + field + " " + value),
                        kind,
                        ref));
    }

    private String colours(String id) {
        return wires(id).stream()
                .map(wire -> wiring.pin(wire.fromPin()).number() + "=TQ")
                .distinct()
                .collect(Collectors.joining(" "));
    }

    /** The same lead once more under another name and of another make. */
    private Optional<Change> twin(String id) {
        Lead lead = lead(id);
        return Optional.of(new Change(
                List.of("add leads {\"id\":\"Y" + id + "\",\"from\":\"" + lead.from() + "\",\"to\":\"" + lead.to()
                        + "\",\"lengthMm\":4321}"),
                Kind.LEAD_NEW,
                "Y" + id));
    }

    private String pair(Wire from, Wire to) {
        return wiring.pin(from.fromPin()).number() + ">"
                + wiring.pin(to.toPin()).number();
    }

    private Optional<Change> crossed(String id) {
        List<Wire> wires = wires(id);
        if (wires.size() < 2) {
            return Optional.empty();
        }
        List<String> pairs =
                new ArrayList<>(wires.stream().map(wire -> pair(wire, wire)).toList());
        pairs.set(0, pair(wires.get(0), wires.get(1)));
        pairs.set(1, pair(wires.get(1), wires.get(0)));
        return set(id, "pins", String.join(" ", pairs), Kind.CROSSED);
    }

    private Optional<Change> wireGone(String id) {
        List<Wire> wires = wires(id);
        if (wires.size() < 2) {
            return Optional.empty();
        }
        String pairs = wires.stream().skip(1).map(wire -> pair(wire, wire)).collect(Collectors.joining(" "));
        return set(id, "pins", pairs, Kind.CONDUCTOR_GONE);
    }

    /** Its to end at the same plug of another unit of the type. */
    private Optional<Change> moved(String id) {
        int row = aircraft.leads().indexOf(lead(id));
        if (!(wiring.to(row) instanceof Site.OnPlug on) || wiring.directory().isJoint(on.unit())) {
            return Optional.empty();
        }
        for (int unit = 0; unit < aircraft.units().size(); unit++) {
            String twin = aircraft.units().get(unit).ref();
            boolean sameType = aircraft.units()
                    .get(unit)
                    .type()
                    .equals(aircraft.units().get(on.unit()).type());
            boolean self = wiring.from(row) instanceof Site.OnPlug from && from.unit() == unit;
            if (sameType && unit != on.unit() && !self && used.add("to " + twin)) {
                return set(id, "to", wiring.plugName(unit, on.plug()), Kind.END_MOVED);
            }
        }
        return Optional.empty();
    }

    private Optional<Change> exchanged(String id) {
        Lead lead = lead(id);
        int row = aircraft.leads().indexOf(lead);
        for (int other = 0; other < aircraft.leads().size(); other++) {
            Lead twin = aircraft.leads().get(other);
            boolean alike = other != row
                    && wiring.to(row) instanceof Site.OnPlug a
                    && wiring.to(other) instanceof Site.OnPlug b
                    && a.unit() != b.unit()
                    && a.plug() == b.plug()
                    && aircraft.units()
                            .get(a.unit())
                            .type()
                            .equals(aircraft.units().get(b.unit()).type());
            boolean apart = !twin.from().equals(lead.from());
            if (alike && apart && wires(id).size() == wires(twin.id()).size() && used.add(twin.id())) {
                String first = row < other ? id : twin.id();
                return Optional.of(new Change(
                        List.of(
                                "set leads[" + id + "].to " + Scalars.write(twin.to()),
                                "set leads[" + twin.id() + "].to " + Scalars.write(lead.to())),
                        Kind.ENDS_EXCHANGED,
                        first));
            }
        }
        return Optional.empty();
    }
}
