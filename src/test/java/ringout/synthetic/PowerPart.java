package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Packs in series and in parallel, the board, and the monitor that feeds the controller. */
final class PowerPart {
    private PowerPart() {}

    static void build(Zone zone) {
        Style style = zone.style();
        double average = (style.rotors() * DriveTypes.AVERAGE_A + 6) / style.strings();
        double peak = (style.rotors() * DriveTypes.PEAK_A + 8) / style.strings();
        Cable cable = Cable.power(zone.dice().between(200, 500), average, peak);
        List<String> sensed = new ArrayList<>();
        for (int s = 1; s <= style.strings(); s++) {
            sensed.add(string(zone, s, cable));
        }
        monitor(zone, sensed);
    }

    /** Packs of one string, from the minus stud of the board to its plus stud; the lead at the plus. */
    private static String string(Zone zone, int string, Cable cable) {
        Box first = pack(zone, zone.style().inSeries() == 1);
        Box last = first;
        negative(zone, string, first, cable);
        if (zone.style().inSeries() == 2) {
            last = pack(zone, true);
            zone.loom().join("link", first, "plus", last, "minus", cable, Map.of("PLUS", "MINUS"));
        }
        return zone.loom().join("pack plus", last, "plus", zone.board(), "bp" + string, cable, Map.of("PLUS", "V"));
    }

    private static Box pack(Zone zone, boolean last) {
        double rest = Numbers.round(4.15 * zone.style().cells());
        Box pack = zone.add(
                "pack",
                last ? "last pack" : "pack",
                "restV",
                Row.of("value", rest, "origin", "measured"),
                "cycles",
                12);
        zone.sink().word("plugOrder", pack.end("minus"));
        zone.sink().word("plugOrder", pack.end("plus"));
        return pack;
    }

    /** The return of a string, on some aircraft through a sensor. */
    private static void negative(Zone zone, int string, Box pack, Cable cable) {
        if (zone.style().shunt()) {
            Box shunt = zone.add("monitor", "shunt");
            zone.loom().join("pack minus", pack, "minus", shunt, "bat", cable, Map.of("MINUS", "0"));
            zone.loom().join("shunt minus", shunt, "load", zone.board(), "bn" + string, cable);
        } else {
            zone.loom().join("pack minus", pack, "minus", zone.board(), "bn" + string, cable, Map.of("MINUS", "0"));
        }
    }

    private static void monitor(Zone zone, List<String> sensed) {
        Box monitor = zone.box("monitor", "monitor");
        int address = zone.dice().between(1, 60);
        zone.unit(
                monitor,
                "ports",
                List.of(BusPart.port("MCAN", address, 1000, "fixed")),
                "senses",
                sensed,
                "voltScaleSet",
                18.0,
                "ampScaleSet",
                60.0,
                "instance",
                "battery " + zone.number(),
                "configuredInstance",
                "battery " + zone.number());
        zone.failsafe("low battery " + zone.number(), monitor);
        zone.feed(monitor, "in", 0.8, 1.5, 3);
        Cable supply = new Cable("can", zone.dice().between(150, 300), 1.2, 2.5, 0, "");
        zone.loom().join("monitor", monitor, "out", zone.controller(), "p1", supply);
        zone.loom().join("sense", monitor, "sns", zone.controller(), "sns", Cable.signal("sense", 250));
        zone.setting(BusPart.port("MCAN", address + 60, 1000, "fixed"));
        BusPart.declare(
                zone,
                "supply " + zone.number(),
                1000,
                List.of(monitor.ref() + ":MCAN", zone.controller().ref() + ":MCAN"));
    }
}
