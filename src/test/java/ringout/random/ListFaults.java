package ringout.random;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.synthetic.Specimen.Joined;

/** Mistakes of the list itself: rows missing, double, with wrong ends. */
final class ListFaults {
    private ListFaults() {}

    static List<Kind> all() {
        return List.of(
                new Kind("only lead of a unit missing", ListFaults::orphan),
                new Kind("motor without its lead", place -> single(place, "phases")),
                new Kind("command lead missing", ListFaults::command),
                new Kind("sense lead missing", ListFaults::sense),
                new Kind("pulse lead missing", ListFaults::pulse),
                new Kind("row written twice", ListFaults::twice),
                new Kind("unit that is not aboard", place -> end(place, Wrong.UNIT)),
                new Kind("plug that is not there", place -> end(place, Wrong.PLUG)),
                new Kind("pin that is not there", ListFaults::pin),
                new Kind("lead from a unit to itself", ListFaults::loop),
                new Kind("two leads of one name", ListFaults::sameName),
                new Kind("lead without a name", ListFaults::noName));
    }

    /** What of an end is wrong. */
    private enum Wrong {
        UNIT,
        PLUG
    }

    private static Optional<Fault> orphan(Place place) {
        return place.lead(
                        lead -> place.count(place.device(lead)) == 1,
                        "payload",
                        "light",
                        "serial",
                        "i2c",
                        "isolated",
                        "actuator")
                .map(lead ->
                        Fault.of("orphan", "T01", List.of(Place.remove(lead))).naming(place.device(lead)));
    }

    private static Optional<Fault> single(Place place, String tag) {
        return place.lead(tag).map(lead -> {
            String motor = place.made(lead.from()).startsWith("MOTOR") ? lead.from() : lead.to();
            return Fault.of("motor", "T01", List.of(Place.remove(lead))).naming(motor);
        });
    }

    private static Optional<Fault> command(Place place) {
        return place.lead("command")
                .map(lead ->
                        Fault.of("command", "T01", List.of(Place.remove(lead))).naming(place.device(lead)));
    }

    private static Optional<Fault> sense(Place place) {
        return place.lead("sense")
                .map(lead ->
                        Fault.of("sense", "T02", List.of(Place.remove(lead))).naming(lead.from(), lead.to()));
    }

    private static Optional<Fault> pulse(Place place) {
        return place.lead("pulse").map(lead -> {
            String drive = place.made(lead.from()).equals("BOARD") ? lead.to() : lead.from();
            return Fault.of("pulse", "T02", List.of(Place.remove(lead))).naming(drive);
        });
    }

    private static Optional<Fault> twice(Place place) {
        return place.lead("serial", "light", "payload", "sense", "pulse")
                .map(lead -> Fault.of(
                                "twice",
                                "T19",
                                List.of(Place.add(
                                        "other",
                                        lead.from() + "-" + lead.fromPlug(),
                                        lead.to() + "-" + lead.toPlug(),
                                        400,
                                        wires(lead))))
                        .naming(lead.id()));
    }

    private static String wires(Joined lead) {
        return lead.wires().stream().map(Object::toString).collect(Collectors.joining(" "));
    }

    private static Optional<Fault> end(Place place, Wrong wrong) {
        return place.any(place.craft().leads())
                .map(lead -> Fault.of(
                                "end",
                                "T03",
                                List.of("set " + Place.row(lead.id(), "to") + " "
                                        + (wrong == Wrong.UNIT ? "Nowhere-" + lead.toPlug() : lead.to() + "-Z99")))
                        .naming(lead.id()));
    }

    private static Optional<Fault> pin(Place place) {
        return place.lead(lead -> lead.wires().size() > 1, "serial", "chain", "sense", "pulses", "command")
                .map(lead -> Fault.of(
                                "pin",
                                "T03",
                                List.of("set " + Place.row(lead.id(), "pins") + " "
                                        + wires(lead).replaceFirst(">\\d+", ">29")))
                        .naming(lead.id()));
    }

    private static Optional<Fault> loop(Place place) {
        String board = place.craft()
                .units(unit -> place.made(unit.ref()).equals("BOARD"))
                .get(0)
                .ref();
        List<Plug> free = place.craft().type(board).plugs().stream()
                .filter(plug -> place.free(board, plug.name()))
                .filter(plug -> Place.pin(plug, PinRole.ZERO_V).isPresent()
                        && Place.pin(plug, PinRole.SUPPLY_THROUGH).isPresent())
                .toList();
        return free.size() < 2
                ? Optional.empty()
                : Optional.of(Fault.of(
                                "loop",
                                "T20",
                                List.of(Place.add(
                                        "power",
                                        board,
                                        free.get(0),
                                        board,
                                        free.get(1),
                                        300,
                                        PinRole.SUPPLY_THROUGH,
                                        PinRole.ZERO_V)))
                        .naming("added"));
    }

    private static Optional<Fault> sameName(Place place) {
        List<Joined> leads = place.craft().leads();
        return Optional.of(Fault.of(
                        "same name",
                        "X02",
                        List.of("set " + Place.row(leads.get(0).id(), "id") + " "
                                + leads.get(leads.size() - 1).id()))
                .naming(leads.get(leads.size() - 1).id()));
    }

    private static Optional<Fault> noName(Place place) {
        List<String> embraced = place.craft().aircraft().units().stream()
                .flatMap(unit -> unit.senses().stream())
                .toList();
        return place.any(place.craft().leads().stream()
                        .filter(lead -> !embraced.contains(lead.id()))
                        .toList())
                .map(lead -> Fault.of("no name", "X02", List.of("clear " + Place.row(lead.id(), "id"))));
    }
}
