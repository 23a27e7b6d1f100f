package ringout.random;

import java.util.List;
import java.util.Optional;
import ringout.model.Bus;
import ringout.model.BusKind;
import ringout.model.Unit;

/** Mistakes of what is set: addresses, rates, indexes, frames. */
final class SettingFaults {
    private SettingFaults() {}

    static List<Kind> all() {
        return List.of(
                new Kind("address used twice", SettingFaults::twice),
                new Kind("address out of range", place -> address(place, "130", "A03")),
                new Kind("address kept for tools", place -> address(place, "127", "A03")),
                new Kind("no address", place -> address(place, "n/a", "A02")),
                new Kind("another bit rate", SettingFaults::rate),
                new Kind("flexible frames declared", SettingFaults::frames),
                new Kind("too many messages", SettingFaults::load),
                new Kind("index of another motor", SettingFaults::index),
                new Kind("I2C address used twice", SettingFaults::strap));
    }

    private static Optional<Bus> bus(Place place, BusKind kind) {
        return place.any(place.craft().aircraft().buses().stream()
                .filter(bus -> bus.kind().is(kind) && bus.members().size() > 1)
                .toList());
    }

    /** A member of a bus as unit and port; not a terminator, which has no address. */
    private static List<String[]> members(Place place, Bus bus) {
        return bus.members().stream()
                .map(member -> member.split(":"))
                .filter(member -> !place.made(member[0]).equals("TERM"))
                .toList();
    }

    private static String addressOf(Place place, String[] member) {
        Unit unit = place.craft().unit(member[0]);
        return unit.ports().stream()
                .filter(port -> port.port().equals(member[1]))
                .map(port -> Integer.toString(port.address().or(0)))
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Fault> twice(Place place) {
        return bus(place, BusKind.CAN)
                .flatMap(bus -> place.any(members(place, bus))
                        .flatMap(one -> place.any(members(place, bus).stream()
                                        .filter(two -> !two[0].equals(one[0]))
                                        .toList())
                                .map(two -> Fault.of(
                                                "twice",
                                                "A01",
                                                List.of("set " + Place.port(one[0], one[1], "address") + " "
                                                        + addressOf(place, two)))
                                        .naming(one[0])
                                        .naming(two[0]))));
    }

    private static Optional<Fault> address(Place place, String value, String code) {
        return bus(place, BusKind.CAN)
                .flatMap(bus -> place.any(members(place, bus))
                        .map(one -> Fault.of(
                                        "address",
                                        code,
                                        List.of("set " + Place.port(one[0], one[1], "address") + " " + value))
                                .naming(one[0])));
    }

    private static Optional<Fault> rate(Place place) {
        return bus(place, BusKind.CAN)
                .flatMap(bus -> place.any(members(place, bus))
                        .map(one -> Fault.of(
                                        "rate",
                                        "A04",
                                        List.of("set " + Place.port(one[0], one[1], "rateKbit") + " 125"))
                                .naming(one[0])));
    }

    private static Optional<Fault> frames(Place place) {
        return bus(place, BusKind.CAN)
                .map(bus -> Fault.of(
                                "frames",
                                "A05",
                                List.of(
                                        "set buses[" + Craft.quoted(bus.name()) + "].frame flexible",
                                        "set buses[" + Craft.quoted(bus.name()) + "].dataRateKbit 2000"))
                        .naming(bus.name()));
    }

    private static Optional<Fault> load(Place place) {
        return bus(place, BusKind.CAN)
                .map(bus -> Fault.of(
                                "load",
                                "A06",
                                List.of("set messages["
                                        + Craft.quoted(
                                                "status of " + bus.members().get(0)) + "].periodMs 0.1"))
                        .naming(bus.name()));
    }

    private static Optional<Fault> index(Place place) {
        return place.any(place.craft().units(unit -> unit.index().isKnown()))
                .map(unit -> Fault.of(
                                "index",
                                "A07",
                                List.of("set " + Place.unit(unit.ref(), "index") + " "
                                        + (unit.index().or(0) + 1)))
                        .naming(unit.ref()));
    }

    private static Optional<Fault> strap(Place place) {
        List<Unit> devices = place.set("IIC", port -> port.i2cAddress().isKnown());
        return place.any(devices)
                .flatMap(one -> place.any(devices.stream()
                                .filter(two -> !two.ref().equals(one.ref()))
                                .toList())
                        .map(two -> Fault.of(
                                        "strap",
                                        "A08",
                                        List.of("set " + Place.port(one.ref(), "IIC", "i2cAddress") + " "
                                                + two.ports()
                                                        .get(0)
                                                        .i2cAddress()
                                                        .or("")))
                                .naming(one.ref())
                                .naming(two.ref())));
    }
}
