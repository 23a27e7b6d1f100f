package ringout.random;

import java.util.List;
import java.util.Optional;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.Spin;
import ringout.model.Unit;
import ringout.synthetic.Specimen.Joined;
import ringout.synthetic.Specimen.Wire;

/** Mistakes of signals, motors and their order. */
final class SignalFaults {
    private SignalFaults() {}

    static List<Kind> all() {
        return List.of(
                new Kind("serial lead straight", SignalFaults::straight),
                new Kind("inverted serial on a port that is not", SignalFaults::inverted),
                new Kind("command wire left out", SignalFaults::silent),
                new Kind("pulse wire left out", SignalFaults::noPulse),
                new Kind("two outputs on one wire", SignalFaults::twoOutputs),
                new Kind("output above what inputs stand", place -> level(place, "12", "S03")),
                new Kind("output below what inputs need", place -> level(place, "1.2", "S03")),
                new Kind("return of a command not with it", place -> far(place, "command wire")),
                new Kind("return of a picture not with it", place -> far(place, "video")),
                new Kind("output on 0V", SignalFaults::tied),
                new Kind("two motor outputs exchanged", SignalFaults::order),
                new Kind("two motor phases exchanged", SignalFaults::phases),
                new Kind("direction flag turned", SignalFaults::flag),
                new Kind("propeller of the other hand", SignalFaults::hand),
                new Kind("no pull-up", SignalFaults::pullUp),
                new Kind("serial device on I2C", SignalFaults::serialOnI2c),
                new Kind("serial device on a bus", SignalFaults::serialOnBus));
    }

    private static Optional<Fault> straight(Place place) {
        return place.lead("serial")
                .map(lead -> Fault.of("straight", "S07", List.of(Place.crossed(lead, "TX", "RX")))
                        .naming(lead.id()));
    }

    private static Optional<Fault> inverted(Place place) {
        return place.lead("command").map(lead -> {
            String receiver = place.device(lead);
            String controller = place.other(lead, receiver);
            String port = Place.port(controller, Place.plug(lead, controller), "inverted");
            return Fault.of("inverted", "S08", List.of("set " + port + " no")).naming(receiver, controller);
        });
    }

    private static Optional<Fault> silent(Place place) {
        return place.lead("command").map(lead -> {
            String function = Place.has(lead, "RX") ? "RX" : "TX";
            return Fault.of("silent", "S02 T21", List.of(Place.without(lead, function)))
                    .naming(lead.id());
        });
    }

    private static Optional<Fault> noPulse(Place place) {
        return place.lead("pulse")
                .map(lead -> Fault.of("no pulse", "S02 T21", List.of(Place.without(lead, "S")))
                        .naming(drive(place, lead)));
    }

    private static String drive(Place place, Joined lead) {
        return place.made(lead.from()).equals("BOARD") ? lead.to() : lead.from();
    }

    /** Two outputs end on the first one's contact of the board; the second contact stays open. */
    private static Optional<Fault> twoOutputs(Place place) {
        return place.lead("pulses").map(lead -> {
            boolean fromController = place.made(lead.from()).equals("CONTROLLER");
            Wire one = lead.wires().get(0);
            Wire two = lead.wires().get(1);
            Wire moved = fromController
                    ? new Wire(two.function(), two.fromPin(), one.toPin())
                    : new Wire(two.function(), one.fromPin(), two.toPin());
            List<Wire> wires = lead.wires().stream()
                    .map(wire -> wire.equals(two) ? moved : wire)
                    .toList();
            return Fault.of("two outputs", "S01 M16", List.of(Place.wires(lead, wires)))
                    .naming(lead.id());
        });
    }

    private static Optional<Fault> level(Place place, String volts, String code) {
        return place.lead("command").map(lead -> {
            String receiver = place.device(lead);
            Plug plug = place.plugOf(receiver, Place.plug(lead, receiver));
            String pin = plug.pins().stream()
                    .filter(one -> one.highV().isKnown())
                    .map(Pin::number)
                    .findFirst()
                    .orElseThrow();
            return Fault.of(
                            "level",
                            code,
                            List.of("set types["
                                    + Craft.quoted(place.craft().unit(receiver).type()) + "].plugs[" + plug.name()
                                    + "].pins[" + pin + "].highV " + volts))
                    .naming(receiver)
                    .naming(place.other(lead, receiver), lead.id());
        });
    }

    private static Optional<Fault> far(Place place, String tag) {
        return place.lead(tag)
                .map(lead -> Fault.of("far", "S05", List.of(Place.without(lead, "0")))
                        .naming(lead.id()));
    }

    private static Optional<Fault> tied(Place place) {
        return place.lead("command wire")
                .map(lead -> Fault.of("tied", "S06 T05", List.of(Place.crossed(lead, "S", "0")))
                        .naming(lead.id()));
    }

    private static Optional<Fault> order(Place place) {
        return place.lead("pulses")
                .map(lead -> Fault.of(
                                "order",
                                "S10",
                                List.of(Place.crossed(
                                        lead,
                                        lead.wires().get(0).function(),
                                        lead.wires().get(1).function())))
                        .naming(lead.id()));
    }

    private static Optional<Fault> phases(Place place) {
        return place.lead("phases").map(lead -> {
            List<Wire> wires = lead.wires();
            String edit =
                    Place.crossed(lead, wires.get(0).function(), wires.get(1).function());
            return Fault.of("phases", "S12", List.of(edit)).naming(lead.from(), lead.to(), lead.id());
        });
    }

    private static Optional<Fault> flag(Place place) {
        return place.any(place.craft().units(unit -> unit.reversed().isKnown()))
                .map(unit -> Fault.of(
                                "flag",
                                "S12",
                                List.of("set " + Place.unit(unit.ref(), "reversed") + " "
                                        + (unit.reversed().or(false) ? "no" : "yes")))
                        .naming(unit.ref()));
    }

    private static Optional<Fault> hand(Place place) {
        return place.any(place.craft().units(unit -> unit.propeller().isKnown()))
                .map(unit -> Fault.of(
                                "hand",
                                "S13",
                                List.of("set " + Place.unit(unit.ref(), "propeller") + " "
                                        + (unit.propeller().is(Spin.CW) ? "CCW" : "CW")))
                        .naming(unit.ref()));
    }

    /** None in any unit on the lines. */
    private static Optional<Fault> pullUp(Place place) {
        List<Unit> units = place.set("IIC", port -> true);
        if (units.isEmpty()) {
            return Optional.empty();
        }
        List<String> edits = units.stream()
                .map(Unit::type)
                .distinct()
                .map(type -> "set types[" + Craft.quoted(type) + "].ports[IIC].pullUpOhm n/a")
                .toList();
        return Optional.of(Fault.of("pull-up", "S20", edits)
                .naming(units.stream().map(Unit::ref).toArray(String[]::new)));
    }

    private static Optional<Fault> serialOnI2c(Place place) {
        return moved(place, "p", PinRole.SCL, PinRole.SDA);
    }

    private static Optional<Fault> serialOnBus(Place place) {
        return moved(place, "b", PinRole.CAN_H, PinRole.CAN_L);
    }

    /** A serial device plugged into a free socket of its controller that is made for something else. */
    private static Optional<Fault> moved(Place place, String kind, PinRole one, PinRole two) {
        return place.lead("serial").flatMap(lead -> {
            String device = place.device(lead);
            String controller = place.other(lead, device);
            return place.freePlug(controller, one, two, PinRole.SUPPLY_OUT).map(plug -> {
                Plug there = place.plugOf(device, Place.plug(lead, device));
                String pins =
                        Place.number(plug, PinRole.SUPPLY_OUT) + ">" + Place.number(there, PinRole.SUPPLY_IN) + " "
                                + Place.number(plug, PinRole.ZERO_V) + ">" + Place.number(there, PinRole.ZERO_V) + " "
                                + Place.number(plug, one) + ">" + Place.number(there, PinRole.SERIAL_OUT) + " "
                                + Place.number(plug, two) + ">" + Place.number(there, PinRole.SERIAL_IN);
                return Fault.of(
                                "moved " + kind,
                                "T05",
                                List.of(
                                        "set " + Place.row(lead.id(), "from") + " " + controller + "-" + plug.name(),
                                        "set " + Place.row(lead.id(), "to") + " " + device + "-" + there.name(),
                                        "set " + Place.row(lead.id(), "pins") + " " + pins))
                        .naming(lead.id(), device);
            });
        });
    }
}
