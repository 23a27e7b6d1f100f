package ringout.random;

import java.util.List;
import java.util.Optional;
import ringout.model.Bus;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.PortSetting;
import ringout.model.TerminatorState;
import ringout.model.Unit;
import ringout.synthetic.Specimen.Joined;

/** Mistakes on a bus: terminators, rings, pairs, lengths. */
final class BusFaults {
    private static final PinRole[] PAIR = {PinRole.CAN_H, PinRole.CAN_L, PinRole.ZERO_V};
    private static final String[] CHAINS = {"chain", "chain end", "drive chain", "drive chain end"};

    private BusFaults() {}

    static List<Kind> all() {
        return List.of(
                new Kind("terminator switched off", BusFaults::off),
                new Kind("one terminator more", BusFaults::extra),
                new Kind("terminator at the wrong unit", BusFaults::misplaced),
                new Kind("terminator plug not fitted", BusFaults::unplugged),
                new Kind("terminator leaves with a unit", BusFaults::leaves),
                new Kind("bus closed to a ring", BusFaults::ring),
                new Kind("bus lead missing", BusFaults::gone),
                new Kind("H and L crossed", BusFaults::swapped),
                new Kind("L left out", place -> half(place, "L")),
                new Kind("H left out", place -> half(place, "H")),
                new Kind("two buses joined", BusFaults::bridged),
                new Kind("branch too long", BusFaults::stub),
                new Kind("trunk too long", BusFaults::trunk),
                new Kind("pair not twisted", BusFaults::loose));
    }

    /** Name of the declared bus of a port. */
    static String bus(Place place, String unit, String port) {
        return place.craft().aircraft().buses().stream()
                .filter(bus -> bus.members().contains(unit + ":" + port))
                .map(Bus::name)
                .findFirst()
                .orElseThrow();
    }

    /** A chain has members with a switch; each is the name of its port at the units along it. */
    private static List<Unit> switched(Place place, String port, TerminatorState state) {
        return place.set(port, setting -> setting.terminator().is(state));
    }

    private static String aPort(Place place) {
        return place.any(place.craft().tagged("drive chain").isEmpty() ? List.of("NCAN") : List.of("NCAN", "ECAN"))
                .orElseThrow();
    }

    private static Optional<Fault> off(Place place) {
        String port = aPort(place);
        return place.any(switched(place, port, TerminatorState.ON))
                .map(unit -> Fault.of(
                                "off", "T06", List.of("set " + Place.port(unit.ref(), port, "terminator") + " off"))
                        .naming(bus(place, unit.ref(), port)));
    }

    private static Optional<Fault> extra(Place place) {
        String port = aPort(place);
        return place.any(switched(place, port, TerminatorState.OFF))
                .map(unit -> Fault.of(
                                "extra", "T06", List.of("set " + Place.port(unit.ref(), port, "terminator") + " on"))
                        .naming(bus(place, unit.ref(), port)));
    }

    private static Optional<Fault> misplaced(Place place) {
        String port = aPort(place);
        return place.any(switched(place, port, TerminatorState.ON))
                .flatMap(end -> place.any(switched(place, port, TerminatorState.OFF))
                        .map(mid -> Fault.of(
                                        "misplaced",
                                        "T07",
                                        List.of(
                                                "set " + Place.port(end.ref(), port, "terminator") + " off",
                                                "set " + Place.port(mid.ref(), port, "terminator") + " on"))
                                .naming(end.ref())));
    }

    private static Optional<Fault> unplugged(Place place) {
        return place.lead("terminator")
                .map(lead -> Fault.of("unplugged", "T06 T01", List.of(Place.remove(lead)))
                        .naming(lead.from(), lead.to(), busOf(place, lead)));
    }

    private static String busOf(Place place, Joined lead) {
        return place.made(lead.from()).equals("TERM") ? bus(place, lead.to(), "NCAN") : bus(place, lead.from(), "NCAN");
    }

    private static Optional<Fault> leaves(Place place) {
        return place.any(switched(place, "NCAN", TerminatorState.ON))
                .filter(unit -> !place.made(unit.ref()).equals("CONTROLLER"))
                .map(unit -> Fault.of(
                                "leaves",
                                "T17",
                                states(
                                        place,
                                        "add states {\"name\": \"node off\", \"absent\": [" + Craft.quoted(unit.ref())
                                                + "]}"))
                        .naming(unit.ref(), bus(place, unit.ref(), "NCAN")));
    }

    /** A state beside the one flown. */
    private static List<String> states(Place place, String line) {
        boolean none = place.craft().aircraft().states().isEmpty();
        return none ? List.of("add states {\"name\": \"as flown\"}", line) : List.of(line);
    }

    /** From the free socket at the end of a chain to a free socket elsewhere on it, or beside a lead of its first unit. */
    private static Optional<Fault> ring(Place place) {
        List<Unit> members = place.set("NCAN", setting -> true);
        return place.any(members.stream()
                        .filter(unit -> place.freePlug(unit.ref(), PAIR).isPresent())
                        .toList())
                .flatMap(last -> place.any(place.craft()
                                .units(unit -> place.made(unit.ref()).equals("CONTROLLER")))
                        .flatMap(controller -> place.any(controllerSockets(place, controller))
                                .map(socket -> Fault.of(
                                                "ring",
                                                "T09",
                                                List.of(Place.add(
                                                        "can",
                                                        last.ref(),
                                                        place.freePlug(last.ref(), PAIR)
                                                                .orElseThrow(),
                                                        controller.ref(),
                                                        socket,
                                                        400,
                                                        PAIR)))
                                        .naming("added"))));
    }

    private static List<Plug> controllerSockets(Place place, Unit controller) {
        return place.craft().type(controller.ref()).plugs().stream()
                .filter(plug ->
                        plug.pins().stream().anyMatch(pin -> pin.inside().is("BCAN")))
                .filter(plug -> place.free(controller.ref(), plug.name()))
                .toList();
    }

    /** What hangs beyond is one unit, or more of the bus. */
    private static Optional<Fault> gone(Place place) {
        return place.lead("chain", "chain end", "branch", "drive chain", "drive chain end")
                .map(lead -> {
                    List<String> alone = List.of(lead.from(), lead.to()).stream()
                            .filter(unit -> place.count(unit) == 1)
                            .toList();
                    Fault fault =
                            Fault.of("gone", alone.isEmpty() ? "T04 T02 P05" : "T01", List.of(Place.remove(lead)));
                    return alone.isEmpty() ? fault : fault.naming(alone.get(0));
                });
    }

    private static Optional<Fault> swapped(Place place) {
        return place.lead("chain", "chain end", "branch", "drive chain", "drive chain end", "monitor")
                .map(lead -> Fault.of("swapped", "T12", List.of(Place.crossed(lead, "H", "L")))
                        .naming(lead.id()));
    }

    private static Optional<Fault> half(Place place, String leg) {
        return place.lead("chain", "chain end", "branch", "drive chain", "drive chain end", "monitor")
                .map(lead -> Fault.of("half", "T13", List.of(Place.without(lead, leg)))
                        .naming(lead.id()));
    }

    private static Optional<Fault> bridged(Place place) {
        List<Unit> nodes = place.set("NCAN", setting -> true).stream()
                .filter(unit -> place.freePlug(unit.ref(), PAIR).isPresent())
                .toList();
        List<Unit> drives = place.set("ECAN", setting -> true).stream()
                .filter(unit -> place.freePlug(unit.ref(), PAIR).isPresent())
                .toList();
        return place.any(nodes)
                .flatMap(node -> place.any(drives)
                        .map(drive -> Fault.of(
                                        "bridged",
                                        "T15",
                                        List.of(Place.add(
                                                "can",
                                                node.ref(),
                                                place.freePlug(node.ref(), PAIR).orElseThrow(),
                                                drive.ref(),
                                                place.freePlug(drive.ref(), PAIR)
                                                        .orElseThrow(),
                                                400,
                                                PAIR)))
                                .naming(bus(place, node.ref(), "NCAN"))
                                .naming(bus(place, drive.ref(), "ECAN"))));
    }

    private static Optional<Fault> stub(Place place) {
        return place.lead("branch")
                .map(lead -> Fault.of(
                                "stub",
                                "T08",
                                List.of(
                                        "set " + Place.row(lead.id(), "lengthMm") + " 900",
                                        "set " + Place.row(lead.id(), "routeMm") + " 850"))
                        .naming(lead.from(), lead.to()));
    }

    /** Beyond the limit of the slowest rate there is. */
    private static Optional<Fault> trunk(Place place) {
        return place.lead(lead -> !Place.has(lead, "V"), CHAINS)
                .map(lead -> Fault.of(
                        "trunk",
                        "T11",
                        List.of(
                                "set " + Place.row(lead.id(), "lengthMm") + " 260000",
                                "set " + Place.row(lead.id(), "routeMm") + " 255000")));
    }

    private static Optional<Fault> loose(Place place) {
        return place.lead(CHAINS)
                .map(lead -> Fault.of("loose", "T14", List.of("set " + Place.row(lead.id(), "twisted") + " no"))
                        .naming(lead.id()));
    }

    /** A setting of a bus port that has an address. */
    static Optional<PortSetting> addressed(Unit unit) {
        return unit.ports().stream().filter(port -> port.address().isKnown()).findFirst();
    }
}
