package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.PortSettings;
import ringout.graph.Trail;
import ringout.graph.bus.I2cNets;
import ringout.model.Datum;
import ringout.model.HiddenDevice;
import ringout.model.PortSetting;
import ringout.model.Unit;
import ringout.model.UnitKind;
import ringout.model.UnitType;

/**
 * Two devices with the same address on one I2C net.
 *
 * <p>Why it matters: both answer at once; one reads the sum of both, and each works alone on the bench.
 *
 * <p>Condition: equal addresses of two devices that share clock and data, also of devices inside units (a compass in a satellite
 * receiver). A flight controller is the master and has no address unless one is listed. Channels of a multiplexer and buses
 * inside a unit are nets of their own.
 *
 * <p>Does not see: devices nobody listed; addresses that software changes.
 *
 * <p>Reference: I2C-bus specification UM10204 (7-bit addresses).
 */
@CheckInfo(
        code = "A08",
        name = "i2c-address-clash",
        severity = Severity.S2,
        since = "0.1",
        needs = {"I2C address of each device as strapped, hidden ones too"})
public final class I2cAddressClash implements Check {
    /** A device on a net: what it is in words, and its unit. */
    private record Device(String words, Unit unit, I2cNets.Port port, boolean strapped) {}

    @Override
    public void look(Situation at, Outcomes out) {
        for (List<I2cNets.Port> net : I2cNets.of(at.circuit()).nets()) {
            Map<Integer, List<Device>> byAddress = new TreeMap<>();
            TreeSet<String> open = new TreeSet<>();
            net.forEach(port -> devices(at, port, byAddress, open));
            if (open.isEmpty()) {
                out.looked();
            } else {
                out.cannotTell(
                        "I2C address of " + String.join(", ", open),
                        "look at its address strap, or scan the bus with the others unplugged",
                        3 * open.size(),
                        open.toArray(new String[0]));
            }
            byAddress.forEach((address, devices) -> {
                if (devices.size() > 1) {
                    out.finding(draft(at, address, devices));
                }
            });
        }
    }

    private static void devices(
            Situation at, I2cNets.Port port, Map<Integer, List<Device>> byAddress, Set<String> open) {
        Unit unit = at.directory().unit(port.unit());
        UnitType type = at.directory().type(port.unit());
        Datum<String> strap =
                PortSettings.of(unit, port.port()).map(PortSetting::i2cAddress).orElse(Datum.notAsked());
        boolean known = strap.isKnown() || strap.isNotApplicable();
        if (strap.isKnown()) {
            put(byAddress, open, strap, new Device(unit.ref(), unit, port, true));
        }
        List<HiddenDevice> inside =
                type.devices().stream().filter(device -> on(type, device, port)).toList();
        for (HiddenDevice device : inside) {
            put(byAddress, open, device.address(), new Device(device.name() + " in " + unit.ref(), unit, port, false));
        }
        boolean master = type.kind().is(UnitKind.CONTROLLER) && strap instanceof Datum.NotAsked;
        if (!known && !master && (inside.isEmpty() || strap instanceof Datum.Unknown)) {
            open.add(unit.ref());
        }
    }

    /** Whether a hidden device hangs on a port; one that names none hangs on the only one there is. */
    private static boolean on(UnitType type, HiddenDevice device, I2cNets.Port port) {
        return device.port().isKnown()
                ? device.port().is(port.port())
                : type.ports().size() <= 1;
    }

    private static void put(
            Map<Integer, List<Device>> byAddress, Set<String> open, Datum<String> address, Device device) {
        Optional<Integer> number = address.known().flatMap(I2cAddressClash::number);
        if (number.isPresent()) {
            byAddress.computeIfAbsent(number.get(), key -> new ArrayList<>()).add(device);
        } else {
            open.add(device.words());
        }
    }

    private static Optional<Integer> number(String text) {
        try {
            return Optional.of(Integer.decode(text.strip().toLowerCase(Locale.ROOT)));
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }

    private static Draft draft(Situation at, int address, List<Device> devices) {
        String hex = String.format(Locale.ROOT, "0x%02X", address);
        List<String> words = devices.stream().map(Device::words).sorted().toList();
        String names = String.join(" and ", words);
        List<Device> movable = devices.stream().filter(Device::strapped).toList();
        String who = (movable.isEmpty() ? devices : movable)
                .stream().map(device -> device.unit().ref()).distinct().sorted().collect(Collectors.joining(" or "));
        Draft draft = Draft.of(Severity.S2, "I2C address clash: " + hex + " is used by " + names)
                .about(words)
                .path(at.circuit()
                        .trail(
                                devices.get(0).port().scl(),
                                devices.get(1).port().scl())
                        .orElse(Trail.NONE))
                .sum("address " + hex + " of " + names + ", every address once on a net")
                .source("I2C-bus specification UM10204")
                .why("both answer at once, and each works alone on the bench")
                .meter("unplug one of them: the other still answers at " + hex)
                .fix(
                        movable.isEmpty()
                                ? "bring one of " + who + " to another I2C port"
                                : "strap " + who + " to a free address, or bring one to another I2C port");
        devices.forEach(device -> draft.at(device.unit(), "i2cAddress"));
        return draft;
    }
}
