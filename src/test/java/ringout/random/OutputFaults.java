package ringout.random;

import java.util.List;
import java.util.Optional;
import ringout.model.AircraftFunction;
import ringout.model.OutputSetting;
import ringout.model.PortSetting;
import ringout.model.Unit;

/** Mistakes in what units are set to send, act on, or say of themselves. */
final class OutputFaults {
    private OutputFaults() {}

    static List<Kind> all() {
        return List.of(
                new Kind("throttle calibrated otherwise", OutputFaults::throttle),
                new Kind("voltage scale of another monitor", OutputFaults::scale),
                new Kind("port set for another device", OutputFaults::port),
                new Kind("driven output without function", OutputFaults::idle),
                new Kind("motor output too fast", OutputFaults::rate),
                new Kind("other number in the configuration", OutputFaults::instance),
                new Kind("address read otherwise", OutputFaults::read),
                new Kind("network id of another tail", OutputFaults::identity),
                new Kind("failsafe of a unit not aboard", OutputFaults::failsafe));
    }

    private static Optional<Fault> set(Optional<Unit> unit, String kind, String codes, String field, String value) {
        return unit.map(found -> Fault.of(kind, codes, List.of("set " + Place.unit(found.ref(), field) + " " + value))
                .naming(found.ref()));
    }

    private static Optional<Fault> throttle(Place place) {
        List<Unit> drives = place.craft().units(unit -> unit.throttleRange().isKnown());
        boolean pulses = place.craft().units(unit -> unit.index().isKnown()).isEmpty();
        return pulses && drives.size() > 2
                ? set(place.any(drives), "throttle", "S15", "throttleRange", "1040-1960")
                : Optional.empty();
    }

    private static Optional<Fault> scale(Place place) {
        List<Unit> monitors = place.craft().units(unit -> unit.voltScaleSet().isKnown());
        return set(place.any(monitors), "scale", "A15", "voltScaleSet", "10.1");
    }

    private static Optional<Fault> port(Place place) {
        return place.any(place.craft().units(unit -> unit.outputs().size() > 1))
                .flatMap(unit -> unit.ports().stream()
                        .filter(port -> port.protocol().is("data"))
                        .map(PortSetting::port)
                        .findFirst()
                        .map(port -> Fault.of(
                                        "port",
                                        "A09",
                                        List.of("set " + Place.unit(unit.ref(), "ports[\"" + port + "\"].protocol")
                                                + " video"))
                                .naming(unit.ref())));
    }

    /** An output of the controller that drives a motor. */
    private static Optional<Fault> output(Place place, String kind, String codes, String field, String value) {
        return place.any(place.craft().units(unit -> unit.outputs().stream().anyMatch(OutputFaults::motor)))
                .flatMap(unit -> unit.outputs().stream()
                        .filter(OutputFaults::motor)
                        .map(OutputSetting::output)
                        .findFirst()
                        .map(output -> Fault.of(
                                        kind,
                                        codes,
                                        List.of("set " + Place.unit(unit.ref(), "outputs[\"" + output + "\"]." + field)
                                                + " " + value))
                                .naming(unit.ref())));
    }

    private static boolean motor(OutputSetting setting) {
        return setting.function().or("").startsWith("motor");
    }

    private static Optional<Fault> idle(Place place) {
        return output(place, "idle", "A14", "function", "n/a");
    }

    private static Optional<Fault> rate(Place place) {
        return output(place, "rate", "S09 A13", "rateHz", "900");
    }

    private static Optional<Fault> instance(Place place) {
        List<Unit> named = place.craft().units(unit -> unit.configuredInstance().isKnown());
        return set(place.any(named), "instance", "A10", "configuredInstance", "another");
    }

    private static Optional<Fault> read(Place place) {
        List<Unit> nodes = place.craft()
                .units(unit ->
                        unit.ports().stream().anyMatch(port -> port.address().isKnown()));
        Optional<Unit> node = place.any(nodes);
        boolean listed = node.stream()
                .flatMap(unit -> unit.ports().stream())
                .anyMatch(port -> port.address().is(99));
        return set(node, "read", "A11", "asRead.address", listed ? "98" : "99");
    }

    private static Optional<Fault> identity(Place place) {
        return Optional.of(Fault.of(
                        "identity",
                        "A12",
                        List.of(
                                "set record.networkId 25",
                                "add record.fleet {\"tail\": \"T7\", \"networkId\": \"25\"}"))
                .naming("T7"));
    }

    private static Optional<Fault> failsafe(Place place) {
        return place.craft().aircraft().functions().stream()
                .filter(function -> function.name().startsWith("low battery"))
                .map(AircraftFunction::name)
                .findFirst()
                .map(name -> Fault.of("failsafe", "S22", List.of("set functions[\"" + name + "\"].actor NOBODY"))
                        .naming("NOBODY"));
    }
}
