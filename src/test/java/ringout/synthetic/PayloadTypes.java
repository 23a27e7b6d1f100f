package ringout.synthetic;

import java.util.List;

/** What the aircraft carries. */
final class PayloadTypes {
    private final Style style;
    private final Pins pins;
    private final String suffix;

    PayloadTypes(Style style, Pins pins, String suffix) {
        this.style = style;
        this.pins = pins;
        this.suffix = suffix;
    }

    private TypeMaker twelve(String name, String kind, double amps) {
        return new TypeMaker(style, name + suffix, kind)
                .plug("pwr", Fit.MEDIUM, List.of(pins.supplyIn("V", Rails.TWELVE), pins.zero("0")), "must", true)
                .input(Rails.TWELVE, 12, 10, 15)
                .load(Rails.TWELVE, amps, amps * 1.2);
    }

    UnitType lamp() {
        return twelve("LAMP", "light", 0.8).make();
    }

    UnitType camera() {
        return twelve("CAMERA", "payload", 0.6)
                .plug("v", Fit.SMALL, List.of(pins.out("VID", "video out", 1.0, ""), pins.zero("0")))
                .make();
    }

    UnitType transmitter() {
        return twelve("VIDEO-TX", "radio", 0.9)
                .plug("v", Fit.SMALL, List.of(pins.in("VID", "video in", "n/a", 2.0), pins.zero("0")), "must", true)
                .set("antenna", true, "noisy", true)
                .make();
    }

    /** Fed by the isolated converter. */
    UnitType heater() {
        return new TypeMaker(style, "HEATER" + suffix, "payload")
                .plug("pwr", Fit.MEDIUM, List.of(pins.supplyIn("V", "v24"), pins.zero("0")), "must", true)
                .input("v24", 24, 20, 30)
                .load("v24", 0.4, 0.4)
                .make();
    }

    /** Drives two actuators and passes its 6 V to them; takes a command from the controller without its supply. */
    UnitType gear() {
        return new TypeMaker(style, "GEAR" + suffix, "gear controller")
                .plug("pwr", Fit.MEDIUM, List.of(pins.supplyIn("V", Rails.SIX), pins.zero("0")), "must", true)
                .plug(
                        "cmd",
                        Fit.SMALL,
                        List.of(pins.in("S", "pulse in", 2.0, 5.5), pins.through("V", Rails.SIX), pins.zero("0")),
                        "must",
                        true)
                .plug("lh", Fit.SMALL, servo("left"), "must", true)
                .plug("rh", Fit.SMALL, servo("right"), "must", true)
                .input(Rails.SIX, 6, 4.8, 7.4)
                .load(Rails.SIX, 0.05, 0.05)
                .set("outputProtocols", List.of("servo pulse"), "maxRateHz", 50)
                .add("timerGroups", Row.of("name", "A", "outputs", List.of("left", "right")))
                .make();
    }

    private List<Pins.Pin> servo(String output) {
        return List.of(pins.out("S", "pulse out", 3.3, output), pins.through("V", Rails.SIX), pins.zero("0"));
    }

    UnitType actuator() {
        return new TypeMaker(style, "ACTUATOR" + suffix, "actuator")
                .plug(
                        "s",
                        Fit.SMALL,
                        List.of(pins.in("S", "pulse in", 2.0, 5.5), pins.supplyIn("V", Rails.SIX), pins.zero("0")),
                        "must",
                        true)
                .input(Rails.SIX, 6, 4.8, 7.4)
                .load(Rails.SIX, 0.3, 1.5)
                .set("outputProtocols", List.of("servo pulse"), "maxRateHz", 50)
                .make();
    }

    /** Works without any lead. */
    UnitType beacon() {
        return new TypeMaker(style, "BEACON" + suffix, "light").make();
    }
}
