package ringout.random;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.model.Lead;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.synthetic.Specimen.Joined;

/** Mistakes of supplies, returns and clamps. */
final class PowerFaults {
    private PowerFaults() {}

    static List<Kind> all() {
        return List.of(
                new Kind("supply and 0V of a load exchanged", PowerFaults::reversed),
                new Kind("plus and minus of a drive exchanged", PowerFaults::drive),
                new Kind("pack the wrong way round", PowerFaults::pack),
                new Kind("supply lead missing", PowerFaults::unfed),
                new Kind("supply wire left out", place -> open(place, "V", "P05")),
                new Kind("0V wire left out", place -> open(place, "0", "P09")),
                new Kind("minus of a drive missing", PowerFaults::minus),
                new Kind("plus of a drive missing", PowerFaults::plus),
                new Kind("pack lead missing", PowerFaults::packLead),
                new Kind("load on the packs", PowerFaults::overvoltage),
                new Kind("load that needs more volts", PowerFaults::undervoltage),
                new Kind("red wire of a command lead", PowerFaults::red),
                new Kind("return of a drive too thin", PowerFaults::thin),
                new Kind("two sizes under one screw", PowerFaults::sizes),
                new Kind("lead in another clamp", PowerFaults::clamp),
                new Kind("pre-charge contact not last", PowerFaults::order),
                new Kind("packs not compared", PowerFaults::compared),
                new Kind("rail on a signal pin", PowerFaults::signal));
    }

    /** A load that hangs on nothing else, so that nothing but its own polarity is wrong. */
    private static Optional<Joined> single(Place place) {
        return place.lead(lead -> place.count(place.device(lead)) == 1, "payload", "isolated");
    }

    private static Optional<Fault> reversed(Place place) {
        return single(place)
                .map(lead -> Fault.of("reversed", "P01", List.of(Place.crossed(lead, "V", "0")))
                        .naming(place.device(lead), lead.id()));
    }

    /** The 0V of a drive is the 0V of its signal too: reversed, it is a short through the signal lead. */
    private static Optional<Fault> drive(Place place) {
        return place.lead("drive plus").map(plus -> {
            String unit = driveOf(place, plus);
            Joined minus = place.at(unit).stream()
                    .filter(lead -> lead.tag().equals("drive minus"))
                    .findFirst()
                    .orElseThrow();
            return Fault.of(
                            "drive",
                            "P01 P02",
                            List.of(end(plus, unit, Place.plug(minus, unit)), end(minus, unit, Place.plug(plus, unit))))
                    .naming(unit, plus.id(), minus.id());
        });
    }

    private static String driveOf(Place place, Joined lead) {
        return place.made(lead.from()).equals("BOARD") ? lead.to() : lead.from();
    }

    /** Moves the end of a lead to another plug of the same unit. */
    private static String end(Joined lead, String unit, String plug) {
        return move(lead, unit, unit + "-" + plug);
    }

    private static String move(Joined lead, String unit, String to) {
        return "set " + Place.row(lead.id(), lead.from().equals(unit) ? "from" : "to") + " " + to;
    }

    private static Optional<Fault> pack(Place place) {
        Joined plus = place.lead("pack plus").orElseThrow();
        String unit = place.made(plus.from()).startsWith("PACK") ? plus.from() : plus.to();
        Joined minus = place.at(unit).stream()
                .filter(lead -> !lead.equals(plus))
                .findFirst()
                .orElseThrow();
        return Optional.of(Fault.of(
                        "pack",
                        "P01 P02",
                        List.of(end(plus, unit, Place.plug(minus, unit)), end(minus, unit, Place.plug(plus, unit))))
                .naming(unit, plus.id(), minus.id()));
    }

    private static Optional<Fault> unfed(Place place) {
        return place.lead("feed", "payload", "gear supply", "isolated").map(lead -> {
            String unit = place.device(lead);
            if (place.made(lead.to()).equals("GEAR") || place.made(lead.from()).equals("GEAR")) {
                unit = place.made(lead.to()).equals("GEAR") ? lead.to() : lead.from();
            } else if (place.made(unit).equals("BOARD")) {
                unit = place.other(lead, unit);
            }
            boolean alone = place.count(unit) == 1;
            return Fault.of("unfed", alone ? "T01" : "T02 P05", List.of(Place.remove(lead)))
                    .naming(unit);
        });
    }

    private static Optional<Fault> open(Place place, String function, String code) {
        return single(place)
                .map(lead -> Fault.of("open", code, List.of(Place.without(lead, function)))
                        .naming(place.device(lead)));
    }

    private static Optional<Fault> minus(Place place) {
        return place.lead("drive minus")
                .map(lead ->
                        Fault.of("minus", "P10", List.of(Place.remove(lead))).naming(driveOf(place, lead)));
    }

    private static Optional<Fault> plus(Place place) {
        return place.lead("drive plus")
                .map(lead ->
                        Fault.of("plus", "T02 P05", List.of(Place.remove(lead))).naming(driveOf(place, lead)));
    }

    /** With one string aboard nothing has a supply. */
    private static Optional<Fault> packLead(Place place) {
        boolean one = place.craft().tagged("pack plus").size() == 1;
        return one
                ? place.lead("pack plus").map(lead -> Fault.of("pack lead", "P05", List.of(Place.remove(lead))))
                : Optional.empty();
    }

    private static Optional<Fault> overvoltage(Place place) {
        String board = place.craft()
                .units(unit -> place.made(unit.ref()).equals("BOARD"))
                .get(0)
                .ref();
        return place.lead(lead -> place.made(place.device(lead)).equals("LAMP"), "payload")
                .flatMap(lead -> place.freePlug(board, PinRole.SUPPLY_THROUGH, PinRole.ZERO_V)
                        .map(plug -> {
                            String lamp = place.device(lead);
                            Plug there = place.plugOf(lamp, Place.plug(lead, lamp));
                            String pins = Place.number(plug, PinRole.SUPPLY_THROUGH) + ">"
                                    + Place.number(there, PinRole.SUPPLY_IN) + " " + Place.number(plug, PinRole.ZERO_V)
                                    + ">" + Place.number(there, PinRole.ZERO_V);
                            return Fault.of(
                                            "overvoltage",
                                            "P04",
                                            List.of(
                                                    "set " + Place.row(lead.id(), "from") + " " + board + "-"
                                                            + plug.name(),
                                                    "set " + Place.row(lead.id(), "to") + " " + lamp + "-"
                                                            + there.name(),
                                                    "set " + Place.row(lead.id(), "pins") + " " + pins))
                                    .naming(lamp);
                        }));
    }

    private static Optional<Fault> undervoltage(Place place) {
        boolean one = place.craft()
                        .units(unit -> place.made(unit.ref()).equals("LAMP"))
                        .size()
                == 1;
        return place.lead(lead -> one && place.made(place.device(lead)).equals("LAMP"), "payload")
                .map(lead -> Fault.of(
                                "undervoltage",
                                "P04",
                                List.of("set types["
                                        + Craft.quoted(place.craft()
                                                .unit(place.device(lead))
                                                .type())
                                        + "].rails[v12].minV 13"))
                        .naming(place.device(lead)));
    }

    private static Optional<Fault> red(Place place) {
        return place.lead("command wire").map(lead -> {
            String from = number(place, lead.from(), lead.fromPlug());
            String to = number(place, lead.to(), lead.toPlug());
            String wires = lead.wires().stream().map(Object::toString).collect(Collectors.joining(" "));
            return Fault.of(
                            "red",
                            "P06",
                            List.of("set " + Place.row(lead.id(), "pins") + " " + wires + " " + from + ">" + to))
                    .naming(lead.id());
        });
    }

    private static String number(Place place, String unit, String plug) {
        return place.plugOf(unit, plug).pins().stream()
                .filter(pin -> pin.role().is(PinRole.SUPPLY_OUT) || pin.role().is(PinRole.SUPPLY_THROUGH))
                .findFirst()
                .orElseThrow()
                .number();
    }

    /** Only this lead, so that its partner under the screw is another size too. */
    private static Optional<Fault> thin(Place place) {
        return place.lead("drive minus")
                .map(lead -> Fault.of("thin", "P10", List.of("set " + Place.row(lead.id(), "awg") + " 26"))
                        .naming(driveOf(place, lead)));
    }

    private static Optional<Fault> sizes(Place place) {
        return place.lead("drive plus", "drive minus").map(lead -> {
            Lead row = place.craft().aircraft().leads().stream()
                    .filter(other -> other.id().equals(lead.id()))
                    .findFirst()
                    .orElseThrow();
            int gauge = row.awg().known().orElseThrow().gauge();
            return Fault.of("sizes", "M17", List.of("set " + Place.row(lead.id(), "awg") + " " + (gauge - 2)))
                    .naming(lead.id());
        });
    }

    private static Optional<Fault> clamp(Place place) {
        return place.lead("drive plus", "drive minus").flatMap(lead -> {
            String board = place.other(lead, driveOf(place, lead));
            String clamp = Place.plug(lead, board);
            List<Joined> others = place.craft().tagged(lead.tag()).stream()
                    .filter(other -> !Place.plug(other, board).equals(clamp))
                    .toList();
            return place.any(others)
                    .map(other -> Fault.of("clamp", "M16", List.of(end(lead, board, Place.plug(other, board))))
                            .naming(board, board + "-" + clamp));
        });
    }

    private static Optional<Fault> order(Place place) {
        List<String> order = new ArrayList<>(place.craft().aircraft().airframe().plugOrder());
        java.util.Collections.reverse(order);
        return Optional.of(Fault.of("order", "B05", List.of("set airframe.plugOrder " + String.join("; ", order))));
    }

    private static Optional<Fault> compared(Place place) {
        boolean parallel = place.craft().tagged("pack plus").size() > 1;
        List<Unit> packs = place.craft().units(unit -> place.made(unit.ref()).startsWith("PACK"));
        return parallel
                ? Optional.of(Fault.of("compared", "B05", List.of("set record.steps[1].attribute length"))
                        .naming(packs.stream().map(Unit::ref).toArray(String[]::new)))
                : Optional.empty();
    }

    /** At a light the wires of supply and signal are exchanged, and its input stands 3.6 V only. */
    private static Optional<Fault> signal(Place place) {
        return place.lead("light").map(lead -> {
            String light = place.device(lead);
            Plug plug = place.plugOf(light, Place.plug(lead, light));
            return Fault.of(
                            "signal",
                            "P03 T05",
                            List.of(
                                    "set types["
                                            + Craft.quoted(
                                                    place.craft().unit(light).type()) + "].plugs["
                                            + plug.name() + "].pins[" + Place.number(plug, PinRole.LOGIC_IN)
                                            + "].maxV 3.6",
                                    Place.crossed(lead, "V", "LED")))
                    .naming(lead.id(), light);
        });
    }
}
