package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;

/** The controller and what hangs on it by wires of its own. */
final class AvionicsTypes {
    /** Serial sockets of a controller. */
    static final int SERIALS = 4;

    /** Sockets of an I2C splice. */
    static final int BRANCHES = 5;

    private final Style style;
    private final Pins pins;
    private final String suffix;

    AvionicsTypes(Style style, Pins pins, String suffix) {
        this.style = style;
        this.pins = pins;
        this.suffix = suffix;
    }

    /** The flight controller; its bus has one socket and a fixed terminator, or two sockets and a switch. */
    UnitType controller(boolean twoSockets) {
        TypeMaker type = new TypeMaker(style, "CONTROLLER" + suffix, "flight controller")
                .plug("p1", Fit.MEDIUM, feed(), "must", true)
                .plug("sns", Fit.SMALL, senses(), "must", true)
                .plug("bus1", Fit.SMALL, socket(pins.supplyOut("V", Rails.PORTS), "BCAN"));
        if (twoSockets) {
            type.plug("bus2", Fit.SMALL, socket(pins.supplyOut("V", Rails.PORTS), "BCAN"));
        }
        outputs(type);
        for (int s = 1; s <= SERIALS; s++) {
            type.plug(
                    "ser" + s,
                    Fit.SMALL,
                    List.of(
                            pins.supplyOut("V", Rails.PORTS),
                            pins.transmit(false),
                            pins.receive(false, false),
                            pins.zero("0")));
            type.serial("ser" + s, "data", false, "");
        }
        type.plug(
                "rc",
                Fit.SMALL,
                List.of(pins.supplyOut("V", Rails.PORTS), pins.receive(false, true), pins.zero("0")),
                "must",
                true);
        type.serial("rc", "command", true, "");
        type.plug("i2c", Fit.SMALL, lines(pins.supplyOut("V", Rails.PORTS), "IIC"));
        type.plug(
                "ld",
                Fit.SMALL,
                List.of(pins.supplyOut("V", Rails.PORTS), pins.out("LED", "logic out", 3.3, ""), pins.zero("0")));
        for (String link : List.of("up", "down")) {
            type.plug(link, Fit.SMALL, List.of(pins.transmit(false), pins.receive(false, false), pins.zero("0")));
            type.serial(link, "data", false, "");
        }
        return type.input(Rails.LOGIC, Rails.LOGIC_V, 4.5, 5.7)
                .output(Rails.PORTS, Rails.LOGIC_V, 0.03, 4)
                .part("ports feed", "link", Rails.LOGIC, Rails.PORTS, "milliohm", 20)
                .load(Rails.LOGIC, 0.5, 0.8)
                .can("MCAN", "fixed", "n/a")
                .can("BCAN", twoSockets ? "switch" : "fixed", twoSockets ? "passive" : "n/a")
                .i2c("IIC", 2200)
                .make();
    }

    private List<Pins.Pin> feed() {
        return List.of(
                pins.supplyIn("V", Rails.LOGIC),
                pins.supplyIn("V2", Rails.LOGIC),
                pins.high("MCAN"),
                pins.low("MCAN"),
                pins.zero("0"),
                pins.zero("02"));
    }

    private List<Pins.Pin> senses() {
        return List.of(pins.in("VOLT", "sense in", "n/a", 3.6), pins.in("AMP", "sense in", "n/a", 3.6), pins.zero("0"));
    }

    private List<Pins.Pin> socket(Pins.Pin supply, String port) {
        return List.of(supply, pins.high(port), pins.low(port), pins.zero("0"));
    }

    private List<Pins.Pin> lines(Pins.Pin supply, String port) {
        return List.of(supply, pins.line("SCL", port), pins.line("SDA", port), pins.zero("0"));
    }

    private void outputs(TypeMaker type) {
        List<Object> names = new ArrayList<>();
        if (style.busDriven()) {
            type.plug("drv", Fit.SMALL, List.of(pins.high("DCAN"), pins.low("DCAN"), pins.zero("0")), "must", true);
            type.can("DCAN", "fixed", "n/a");
        } else {
            List<Pins.Pin> row = new ArrayList<>();
            for (int r = 1; r <= style.rotors(); r++) {
                row.add(pins.out("S" + r, "pulse out", 3.3, "out " + r));
                names.add("out " + r);
            }
            type.plug("mo", Fit.SMALL, row).plug("mg", Fit.SMALL, List.of(pins.zero("0"), pins.zero("02")));
            type.add("timerGroups", Row.of("name", "A", "outputs", List.copyOf(names)));
        }
        type.plug(
                "sv",
                Fit.SMALL,
                List.of(pins.out("S", "pulse out", 3.3, "aux"), pins.supplyOut("V", Rails.PORTS), pins.zero("0")));
        type.add("timerGroups", Row.of("name", "B", "outputs", List.of("aux")));
    }

    /** Inverted serial from the pilot's sticks. */
    UnitType receiver() {
        return small("RECEIVER", "command receiver", 0.1)
                .plug(
                        "o",
                        Fit.SMALL,
                        List.of(pins.supplyIn("V", Rails.LOGIC), pins.transmit(false), pins.zero("0")),
                        "must",
                        true)
                .serial("o", "command", true, "command")
                .make();
    }

    /** A serial device, its pins named from its own side or from the other. */
    UnitType serial(boolean peer) {
        return small(peer ? "SERIAL-P" : "SERIAL-S", peer ? "radio" : "satellite receiver", 0.12)
                .plug(
                        "u",
                        Fit.SMALL,
                        List.of(
                                pins.supplyIn("V", Rails.LOGIC),
                                pins.transmit(peer),
                                pins.receive(peer, false),
                                pins.zero("0")))
                .serial("u", "data", false, "data")
                .make();
    }

    /** Status light. */
    UnitType light() {
        return small("LIGHT", "light", 0.06)
                .plug(
                        "l",
                        Fit.SMALL,
                        List.of(pins.supplyIn("V", Rails.LOGIC), pins.in("LED", "logic in", 2.0, 5.5), pins.zero("0")))
                .make();
    }

    /** A rangefinder on I2C. */
    UnitType ranger() {
        return small("RANGER", "sensor", 0.08)
                .plug("i", Fit.SMALL, lines(pins.supplyIn("V", Rails.LOGIC), "IIC"), "must", true)
                .i2c("IIC", 10000)
                .make();
    }

    /** A sensor with a second addressed device inside. */
    UnitType twin() {
        return small("TWIN", "sensor", 0.08)
                .plug("i", Fit.SMALL, lines(pins.supplyIn("V", Rails.LOGIC), "IIC"), "must", true)
                .i2c("IIC", "n/a")
                .add("devices", Row.of("name", "compass", "port", "IIC", "address", "0x1e"))
                .make();
    }

    private TypeMaker small(String name, String kind, double amps) {
        return new TypeMaker(style, name + suffix, kind)
                .input(Rails.LOGIC, Rails.LOGIC_V, 4.5, 5.7)
                .load(Rails.LOGIC, amps, amps * 1.5);
    }

    /** Sockets in parallel. */
    UnitType splice() {
        TypeMaker type = new TypeMaker(style, "SPLICE" + suffix, "splice");
        for (int b = 1; b <= BRANCHES; b++) {
            type.plug(
                    "s" + b,
                    Fit.SMALL,
                    List.of(
                            pins.passive("V", "v"),
                            pins.passive("SCL", "scl"),
                            pins.passive("SDA", "sda"),
                            pins.passive("0", "0")));
        }
        return type.make();
    }
}
