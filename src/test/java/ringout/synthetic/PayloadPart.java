package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What runs on 12 V and 6 V. */
final class PayloadPart {
    private static final int OUTLETS = 6;

    private final Zone zone;
    private final List<String> outlets = new ArrayList<>();
    private Box regulator;
    private boolean converted;

    PayloadPart(Zone zone) {
        this.zone = zone;
        this.regulator = zone.board();
    }

    /** Whether there is an outlet for so many more. */
    boolean has(int wanted) {
        return outlets.size() >= wanted || (outlets.isEmpty() && zone.freeOutlets() > 2);
    }

    private String outlet() {
        if (outlets.isEmpty()) {
            regulator = zone.add("monitor", "reg12");
            zone.feed(regulator, "in", 2.5, 5, 7.5);
            for (int o = 1; o <= OUTLETS; o++) {
                outlets.add("o" + o);
            }
            converted = false;
        }
        return outlets.remove(zone.dice().below(outlets.size()));
    }

    private void feed(Box to, double amps) {
        String outlet = outlet();
        Cable cable = Cable.power(zone.dice().between(150, 600), amps, amps * 1.2);
        zone.loom().join("payload", regulator, outlet, to, "pwr", cable);
    }

    void lamp() {
        feed(zone.add("payload", "lamp"), 0.8);
    }

    /** A camera and the transmitter it feeds. */
    void video() {
        Box camera = zone.add("payload", "camera");
        Box transmitter = zone.add("payload", "transmitter");
        feed(camera, 0.6);
        feed(transmitter, 0.9);
        Cable cable = Cable.signal("video", zone.dice().between(100, 500));
        zone.loom().join("video", camera, "v", transmitter, "v", cable);
    }

    /** Two lamps on one outlet, joined by splices. */
    void splicedLamps() {
        String outlet = outlet();
        String plus = zone.joint(3);
        String minus = zone.joint(3);
        Cable trunk = Cable.power(200, 1.6, 2).in("lamps " + zone.number());
        UnitType.Plug from = regulator.type().plug(outlet);
        zone.loom().single(regulator.end(outlet) + "-" + from.contact("V").number(), plus, trunk, from.fit());
        zone.loom()
                .single(minus, regulator.end(outlet) + "-" + from.contact("0").number(), trunk, from.fit());
        for (int n = 0; n < 2; n++) {
            Box lamp = zone.add("payload", "lamp");
            UnitType.Plug to = lamp.type().plug("pwr");
            Cable branch = Cable.power(300, 0.8, 1).in("lamps " + zone.number());
            zone.loom().single(plus, lamp.end("pwr") + "-" + to.contact("V").number(), branch, to.fit());
            zone.loom().single(lamp.end("pwr") + "-" + to.contact("0").number(), minus, branch, to.fit());
        }
    }

    boolean canConvert() {
        return !converted && has(1);
    }

    /** A load behind a converter with a 0V of its own. */
    void isolated() {
        Box converter = zone.box("monitor", "isolated");
        zone.unit(converter);
        String outlet = outlet();
        zone.loom().join("payload", regulator, outlet, converter, "in", Cable.power(200, 0.9, 1));
        Box heater = zone.add("payload", "heater");
        zone.loom()
                .join(
                        "isolated",
                        converter,
                        "o1",
                        heater,
                        "pwr",
                        Cable.power(300, 0.4, 0.5),
                        Map.of("V", "V", "0", "0"));
        converted = true;
    }

    /** Actuators behind a controller of their own, commanded without the red wire. */
    Row gear() {
        Box supply = zone.add("monitor", "reg6");
        zone.feed(supply, "in", 0.3, 1.5, 3);
        Box gear = zone.box("drive", "gear");
        zone.unit(gear, "outputs", List.of(output("left", "gear left"), output("right", "gear right")));
        zone.loom().join("gear supply", supply, "o1", gear, "pwr", Cable.power(200, 0.7, 3.2));
        Cable command = Cable.signal("pulse", zone.dice().between(150, 400));
        zone.loom().join("command wire", zone.controller(), "sv", gear, "cmd", command, Map.of("S", "S", "0", "0"));
        for (String side : List.of("lh", "rh")) {
            boolean left = side.equals("lh");
            Box actuator =
                    zone.add("drive", "actuator", "positionRole", left ? "left" : "right", "yMm", left ? -150 : 150);
            zone.loom().join("actuator", gear, side, actuator, "s", new Cable("pulse", 350, 0.4, 1.5, 0, ""));
        }
        return output("aux", "gear");
    }

    private static Row output(String output, String function) {
        return Row.of("output", output, "function", function, "protocol", "servo pulse")
                .with("rateHz", 50, "reversed", false);
    }
}
