package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Speed controllers and motors of a zone: clamps, phases, pulses or a bus, frame table and functions. */
final class DrivePart {
    private static final double RADIUS_MM = 900;

    /** What the leads of a speed controller are made for: little of its return then goes through the signal lead. */
    private static final double SIZED_A = 10;

    private final Zone zone;
    private final Ring ring;
    private final List<Object> outputs = new ArrayList<>();
    private final List<Setting> settings = new ArrayList<>();

    /**
     * The ring of all rotors.
     *
     * @param first number of rotors before this zone
     * @param all number of rotors aboard
     */
    record Ring(int first, int all) {}

    /** A rotor: its number, direction, bearing and place in a pair. */
    private record Rotor(int number, String spin, double bearing, String level) {}

    /** What is set in a speed controller. */
    private record Setting(Box drive, Rotor rotor, boolean reversed) {}

    private DrivePart(Zone zone, Ring ring) {
        this.zone = zone;
        this.ring = ring;
    }

    /** Builds the drives; the settings of the controller's outputs. */
    static List<Object> build(Zone zone, Ring ring) {
        DrivePart part = new DrivePart(zone, ring);
        part.drives();
        return part.outputs;
    }

    private void drives() {
        int count = zone.style().rotors();
        List<Integer> indexes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            indexes.add(i);
        }
        List<Integer> channels = zone.dice().shuffled(indexes);
        Cable supply = Cable.power(zone.dice().between(300, 700), SIZED_A, DriveTypes.PEAK_A);
        for (int i = 0; i < count; i++) {
            Rotor rotor = rotor(ring.first() + i);
            Box drive = zone.box("drive", "drive");
            Box motor = motor(rotor);
            boolean reversed = phases(drive, motor, rotor);
            power(drive, i % (count / 2) + 1, supply);
            settings.add(new Setting(drive, rotor, reversed));
            if (!zone.style().busDriven()) {
                pulse(drive, channels.get(i) + 1, rotor);
            }
            function(drive, motor, rotor);
        }
        if (zone.style().busDriven()) {
            bus();
        } else {
            settings.forEach(setting -> row(setting, List.of(), "n/a"));
            signals();
        }
    }

    private Rotor rotor(int index) {
        boolean pair = zone.style().coaxial();
        int places = pair ? ring.all() / 2 : ring.all();
        double bearing = -179.0 + 358.0 * (pair ? index / 2 : index) / places;
        boolean clockwise = pair ? (index % 2 == 0) == (index / 2 % 2 == 0) : index % 2 == 0;
        String level = pair ? (index % 2 == 0 ? "upper" : "lower") : "single";
        return new Rotor(index + 1, clockwise ? "CW" : "CCW", bearing, level);
    }

    private Box motor(Rotor rotor) {
        Box motor = zone.box("motor", zone.dice().chance(0.5) ? "motor CW" : "motor CCW");
        double angle = Math.toRadians(rotor.bearing());
        zone.unit(
                motor,
                "xMm",
                Numbers.round(RADIUS_MM * Math.cos(angle)),
                "yMm",
                Numbers.round(RADIUS_MM * Math.sin(angle)),
                "motor",
                rotor.number(),
                "propeller",
                rotor.spin(),
                "pusher",
                false,
                "positionRole",
                "M" + rotor.number());
        zone.sink()
                .add(
                        "rotors",
                        Row.of("number", rotor.number(), "motor", motor.ref(), "bearingDeg", rotor.bearing())
                                .with("radiusMm", RADIUS_MM, "level", rotor.level(), "spin", rotor.spin())
                                .with("thrustMaxKgf", 5.2, "output", Integer.toString(rotor.number())));
        return motor;
    }

    /** Joins the phases in any order; whether the direction flag has to be set for the wanted direction. */
    private boolean phases(Box drive, Box motor, Rotor rotor) {
        List<String> there = zone.dice().shuffled(List.of("U", "V", "W"));
        Map<String, String> wires = Map.of("A", there.get(0), "B", there.get(1), "C", there.get(2));
        zone.loom()
                .join("phases", drive, "ph", motor, "ph", Cable.power(80, 5, 20).as("phase"), wires);
        boolean odd = List.of("UWV", "VUW", "WVU").contains(String.join("", there));
        boolean sameBase = motor.type().row().text("baseSpin").equals(rotor.spin());
        return odd == sameBase;
    }

    private void power(Box drive, int clamp, Cable supply) {
        zone.loom().join("drive plus", zone.board(), "kp" + clamp, drive, "p", supply);
        zone.loom().join("drive minus", zone.board(), "kn" + clamp, drive, "n", supply);
    }

    private void pulse(Box drive, int channel, Rotor rotor) {
        Cable cable = Cable.carrying("pulse", zone.dice().between(350, 800), 1.2, 2);
        zone.loom().join("pulse", zone.board(), "o" + channel, drive, "sig", cable);
        outputs.add(Row.of("output", "out " + channel, "function", "motor " + rotor.number())
                .with("protocol", "fast pulse", "rateHz", 400, "reversed", false));
    }

    private void signals() {
        Cable cable = Cable.signal("pulse", zone.dice().between(120, 260)).in("pulses " + zone.number());
        zone.loom().join("pulses", zone.controller(), "mo", zone.board(), "hin", cable);
        zone.loom().join("pulse return", zone.controller(), "mg", zone.board(), "hret", cable.as("return"));
    }

    private void function(Box drive, Box motor, Rotor rotor) {
        zone.sink()
                .add(
                        "functions",
                        Row.of("name", "motor " + rotor.number(), "flightCritical", true)
                                .with("chain", List.of(zone.controller().ref(), drive.ref(), motor.ref()))
                                .with("indications", List.of("motor does not turn"))
                                .with("preflight", "each motor turns on command, propellers off"));
    }

    private void row(Setting setting, List<Object> ports, Object index) {
        zone.unit(
                setting.drive(),
                "ports",
                ports,
                "index",
                index,
                "motor",
                setting.rotor().number(),
                "reversed",
                setting.reversed(),
                "unfused",
                true,
                "firmware",
                "2.4",
                "throttleRange",
                "1000-2000",
                "positionRole",
                "M" + setting.rotor().number());
    }

    /** A chain through the speed controllers in any order, from the controller to a terminator. */
    private void bus() {
        List<String> members = new ArrayList<>(List.of(zone.controller().ref() + ":DCAN"));
        zone.setting(BusPart.port("DCAN", 1, 1000, "fixed"));
        Box before = zone.controller();
        String from = "drv";
        int left = settings.size();
        for (Setting setting : zone.dice().shuffled(settings)) {
            Cable cable = Cable.signal("can", zone.dice().between(400, 900));
            left--;
            zone.loom()
                    .join(left == 0 ? "drive chain end" : "drive chain", before, from, setting.drive(), "bus1", cable);
            Row port =
                    BusPart.port("ECAN", 20 + setting.rotor().number() - ring.first(), 1000, left == 0 ? "on" : "off");
            row(setting, List.of(port), setting.rotor().number());
            members.add(setting.drive().ref() + ":ECAN");
            before = setting.drive();
            from = "bus2";
        }
        BusPart.declare(zone, "drives " + zone.number(), 1000, members);
    }
}
