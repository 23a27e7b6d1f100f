package ringout.synthetic;

import java.util.List;
import java.util.Map;

/** The contacts the makers of synthetic units know, each with everything a careful maker says of it. */
final class Pins {
    private static final Map<String, List<String>> NAMES = Map.ofEntries(
            Map.entry("V", List.of("VCC", "V+", "PWR", "U+")),
            Map.entry("0", List.of("GND", "RTN", "COM", "V-")),
            Map.entry("H", List.of("CANH", "HI", "BUS_H", "C_HI")),
            Map.entry("L", List.of("CANL", "LO", "BUS_L", "C_LO")),
            Map.entry("TX", List.of("TXD", "OUT", "DO")),
            Map.entry("RX", List.of("RXD", "INP", "DI")),
            Map.entry("SCL", List.of("SCL", "CLK")),
            Map.entry("SDA", List.of("SDA", "DAT")),
            Map.entry("S", List.of("SIG", "PULSE", "CMD")));

    private final Style style;

    /** A contact before it has a number. */
    record Pin(String function, Row row) {}

    Pins(Style style) {
        this.style = style;
    }

    private Pin pin(String function, String role, Object... more) {
        return new Pin(function, Row.of("name", name(function), "role", role).with(more));
    }

    private String name(String function) {
        String base = function.replaceAll("(?<=.)\\d+$", "");
        List<String> choices = NAMES.getOrDefault(base, List.of(base));
        return style.pinName(base, choices) + function.substring(base.length());
    }

    Pin supplyIn(String function, String rail) {
        return pin(function, "supply in", "inside", rail);
    }

    Pin supplyOut(String function, String rail) {
        return pin(function, "supply out", "inside", rail);
    }

    Pin through(String function, String rail) {
        return pin(function, "supply through", "inside", rail);
    }

    Pin zero(String function) {
        return pin(function, "0V");
    }

    Pin zero(String function, String inside) {
        return pin(function, "0V", "inside", inside);
    }

    Pin packPlus() {
        return pin("PLUS", "pack plus");
    }

    Pin packMinus() {
        return pin("MINUS", "pack minus");
    }

    Pin high(String port) {
        return bus("H", "can H", port);
    }

    Pin low(String port) {
        return bus("L", "can L", port);
    }

    private Pin bus(String function, String role, String port) {
        return pin(function, role, "inside", port, "maxV", 36, "drive", "transceiver", "powerOffSafe", true);
    }

    /** A serial output as named by its maker: from the unit's own side, or from the side of what is plugged in. */
    Pin transmit(boolean peer) {
        Row row = Row.of("name", name(peer ? "RX" : "TX"), "role", peer ? "serial in" : "serial out")
                .with("highV", 3.3, "drive", "push-pull", "namedFrom", peer ? "peer" : "self");
        return new Pin("TX", row);
    }

    /** A serial input as named by its maker. */
    Pin receive(boolean peer, boolean needed) {
        Row row = Row.of("name", name(peer ? "TX" : "RX"), "role", peer ? "serial out" : "serial in")
                .with("thresholdV", 2.0, "maxV", 5.5, "needed", needed, "powerOffSafe", true)
                .with("namedFrom", peer ? "peer" : "self");
        return new Pin("RX", row);
    }

    Pin out(String function, String role, double highV, String output) {
        return pin(function, role, "output", output, "highV", highV, "drive", "push-pull");
    }

    Pin in(String function, String role, Object thresholdV, double maxV) {
        return pin(function, role, "thresholdV", thresholdV, "maxV", maxV, "needed", true, "powerOffSafe", true);
    }

    Pin line(String function, String port) {
        String role = function.equals("SCL") ? "scl" : "sda";
        return pin(
                function, role, "inside", port, "highV", 3.3, "thresholdV", 2.31, "maxV", 3.6, "drive", "open-drain");
    }

    Pin passive(String function, String label) {
        return pin(function, "passive", "inside", label);
    }

    Pin phase(String letter) {
        return new Pin(letter, Row.of("name", letter, "role", "phase"));
    }

    Pin coil(String function) {
        return pin(function, "coil");
    }

    Pin unused(String function) {
        return new Pin(function, Row.of("name", "-", "role", "none", "spare", true));
    }
}
