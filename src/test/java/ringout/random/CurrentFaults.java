package ringout.random;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.model.Unit;
import ringout.synthetic.Specimen.Joined;

/** Mistakes that show in currents, drops, heat, fuses and packs. */
final class CurrentFaults {
    private CurrentFaults() {}

    static List<Kind> all() {
        return List.of(
                new Kind("fuse too large for its wire", place -> fuse(place, "60", "P22")),
                new Kind("fuse too small for its load", place -> fuse(place, "0.05", "P23")),
                new Kind("payload at the end of a long thin lead", CurrentFaults::drop),
                new Kind("no pre-charge", CurrentFaults::inrush),
                new Kind("an old pack in series with a new one", CurrentFaults::unlike),
                new Kind("packs of unequal charge in parallel", CurrentFaults::apart),
                new Kind(
                        "mission longer than the packs last",
                        place -> plain("mission", "P30", "set airframe.missionMin 600")),
                new Kind("supply lead longer than the maker wants", CurrentFaults::longLead),
                new Kind("sensor around the wrong lead", CurrentFaults::sensed),
                new Kind("isolator that isolates a lamp only", CurrentFaults::isolator),
                new Kind("regulator too small", CurrentFaults::regulator),
                new Kind("signal wire too thick for its contact", CurrentFaults::thick),
                new Kind("contact too small for its current", CurrentFaults::contact),
                new Kind("pack that gives too little current", CurrentFaults::pack),
                new Kind("event that no supply stands", CurrentFaults::event));
    }

    private static Optional<Fault> plain(String kind, String code, String... edits) {
        return Optional.of(Fault.of(kind, code, List.of(edits)));
    }

    private static String type(Place place, String unit) {
        return "types[" + Craft.quoted(place.craft().unit(unit).type()) + "]";
    }

    /** A supply lead with a fuse of its own. */
    private static Optional<Fault> fuse(Place place, String amps, String code) {
        return place.lead(
                        lead -> place.craft().aircraft().leads().stream()
                                .anyMatch(row -> row.id().equals(lead.id())
                                        && row.fuseA().isKnown()),
                        "feed")
                .map(lead -> Fault.of("fuse", code, List.of("set " + Place.row(lead.id(), "fuseA") + " " + amps))
                        .naming(lead.id(), "fuse of " + lead.id()));
    }

    private static Optional<Fault> drop(Place place) {
        return place.lead(lead -> place.count(place.device(lead)) == 1, "payload")
                .map(lead -> Fault.of(
                                "drop",
                                "P17 P18",
                                List.of(
                                        "set " + Place.row(lead.id(), "lengthMm") + " 25000",
                                        "set " + Place.row(lead.id(), "routeMm") + " 24000"))
                        .naming(place.device(lead)));
    }

    private static Optional<Fault> inrush(Place place) {
        ArrayList<String> edits = place.craft().tagged("pack plus").stream()
                .map(lead -> place.made(lead.from()).startsWith("PACK")
                        ? type(place, lead.from()) + ".plugs[" + lead.fromPlug() + "]"
                        : type(place, lead.to()) + ".plugs[" + lead.toPlug() + "]")
                .distinct()
                .map(plug -> "set " + plug + ".suppressor no")
                .collect(Collectors.toCollection(ArrayList::new));
        Joined drive = place.craft().tagged("drive plus").get(0);
        edits.add("set " + type(place, driveOf(place, drive)) + ".inputMicrofarad 5000");
        return Optional.of(Fault.of("inrush", "P26 B05", edits));
    }

    private static Optional<Fault> unlike(Place place) {
        return place.lead("link")
                .map(lead -> Fault.of("unlike", "P27", List.of("set " + Place.unit(lead.from(), "cycles") + " 200"))
                        .naming(lead.from()));
    }

    private static Optional<Fault> apart(Place place) {
        List<Joined> plus = place.craft().tagged("pack plus");
        if (plus.size() < 2 || !place.craft().tagged("link").isEmpty()) {
            return Optional.empty();
        }
        return place.any(plus).map(lead -> {
            String pack = place.made(lead.from()).startsWith("PACK") ? lead.from() : lead.to();
            return Fault.of("apart", "P28", List.of("set " + Place.unit(pack, "restV") + " 17.6"))
                    .naming(pack);
        });
    }

    private static String driveOf(Place place, Joined lead) {
        return place.made(lead.from()).equals("BOARD") ? lead.to() : lead.from();
    }

    private static Optional<Fault> longLead(Place place) {
        return place.lead("drive plus").map(lead -> {
            String drive = driveOf(place, lead);
            return Fault.of("long", "P32", List.of("set " + Place.row(lead.id(), "lengthMm") + " 1500"))
                    .naming(drive, lead.id());
        });
    }

    private static Optional<Fault> sensed(Place place) {
        boolean shunt = !place.craft().tagged("shunt minus").isEmpty();
        String monitor =
                place.craft().units(unit -> !unit.senses().isEmpty()).get(0).ref();
        return shunt
                ? Optional.empty()
                : place.lead("drive plus")
                        .map(lead -> Fault.of(
                                        "sensed",
                                        "P33",
                                        List.of("set " + Place.unit(monitor, "senses") + " " + lead.id() + ";"))
                                .naming(monitor));
    }

    private static Optional<Fault> isolator(Place place) {
        return place.lead(lead -> place.count(place.device(lead)) == 1, "payload")
                .map(lead -> {
                    String lamp = place.device(lead);
                    return Fault.of(
                            "isolator",
                            "P34",
                            List.of("set airframe.isolator " + lamp + "-" + Place.plug(lead, lamp) + ";"));
                });
    }

    private static Optional<Fault> regulator(Place place) {
        String monitor =
                place.craft().units(unit -> !unit.senses().isEmpty()).get(0).ref();
        return Optional.of(Fault.of(
                        "regulator",
                        "P19",
                        List.of(
                                "set " + type(place, monitor) + ".rails[vl].continuousA 0.2",
                                "set " + type(place, monitor) + ".rails[vl].peakA 0.3"))
                .naming(monitor));
    }

    private static Optional<Fault> thick(Place place) {
        return place.lead("sense")
                .map(lead -> Fault.of("thick", "M15", List.of("set " + Place.row(lead.id(), "awg") + " 16"))
                        .naming(lead.id()));
    }

    private static Optional<Fault> contact(Place place) {
        return place.lead("drive plus").map(lead -> {
            String drive = driveOf(place, lead);
            String plug = Place.plug(lead, drive);
            return Fault.of(
                    "contact", "P16", List.of("set " + type(place, drive) + ".plugs[" + plug + "].contactRatingA 3"));
        });
    }

    private static Optional<Fault> pack(Place place) {
        return place.lead("pack plus").map(lead -> {
            String pack = place.made(lead.from()).startsWith("PACK") ? lead.from() : lead.to();
            return Fault.of("pack", "P29", List.of("set " + type(place, pack) + ".parts[cells].rating.cRate 0.5"))
                    .naming(place
                            .craft()
                            .units(unit ->
                                    unit.type().equals(place.craft().unit(pack).type()))
                            .stream()
                            .map(Unit::ref)
                            .toArray(String[]::new));
        });
    }

    private static Optional<Fault> event(Place place) {
        return place.lead(
                        lead -> place.count(place.device(lead)) == 1
                                && place.made(place.other(lead, place.device(lead)))
                                        .equals("REG12"),
                        "payload")
                .map(lead -> Fault.of(
                        "event",
                        "P31 P19",
                        List.of(
                                "set " + Place.row(lead.id(), "awg") + " 14",
                                "add events {\"name\": \"glare\", \"loads\": [{\"unit\": "
                                        + Craft.quoted(place.device(lead)) + ", \"amps\": 18, \"seconds\": 2}]}")));
    }
}
