package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What hangs on the controller by leads of its own: receiver, serial devices, I2C, light, links to other zones. */
final class AvionicsPart {
    private static final Map<String, String> CROSSED = Map.of("V", "V", "TX", "RX", "RX", "TX", "0", "0");

    private final Zone zone;
    private final List<String> sockets;

    AvionicsPart(Zone zone) {
        this.zone = zone;
        List<String> all = new ArrayList<>();
        for (int s = 1; s <= AvionicsTypes.SERIALS; s++) {
            all.add("ser" + s);
        }
        this.sockets = new ArrayList<>(zone.dice().shuffled(all));
    }

    private static Row port(Box box, String use, String protocol, int baud, boolean inverted) {
        return Row.of("port", box.type().plug(use).name(), "protocol", protocol, "baud", baud, "inverted", inverted);
    }

    /** The pilot's sticks, inverted serial. */
    void receiver() {
        Box receiver = zone.box("serial", "receiver");
        zone.unit(receiver, "ports", List.of(port(receiver, "o", "command", 100000, true)));
        zone.setting(port(zone.controller(), "rc", "command", 100000, true));
        Cable cable = Cable.signal("serial", zone.dice().between(150, 400));
        zone.loom()
                .join("command", zone.controller(), "rc", receiver, "o", cable, Map.of("V", "V", "RX", "TX", "0", "0"));
        zone.failsafe("command receiver loss " + zone.number(), receiver);
        String name = "manual control " + zone.number();
        zone.sink()
                .add(
                        "functions",
                        Row.of(
                                        "name",
                                        name,
                                        "chain",
                                        List.of(
                                                receiver.ref(),
                                                zone.controller().ref()))
                                .with("flightCritical", true, "indications", List.of("no arming"))
                                .with("preflight", "stick moves on the ground station"));
    }

    boolean canSerial() {
        return sockets.size() > 1;
    }

    /** A device on a serial socket, its pins named from either side. */
    void serial() {
        String socket = sockets.remove(0);
        boolean self = zone.dice().chance(0.5);
        Box device = zone.box("serial", self ? "serial self" : "serial peer");
        Row port = port(device, "u", "data", 57600, false);
        String number = "device " + device.ref();
        zone.unit(device, "ports", List.of(port), "instance", number, "configuredInstance", number);
        if (self) {
            zone.failsafe("geofence of " + device.ref(), device);
        }
        zone.setting(port(zone.controller(), socket, "data", 57600, false));
        Cable cable = Cable.signal("serial", zone.dice().between(200, 700));
        zone.loom().join("serial", zone.controller(), socket, device, "u", cable, CROSSED);
        zone.sink()
                .add(
                        "functions",
                        Row.of("name", "data of " + device.ref(), "flightCritical", false)
                                .with(
                                        "chain",
                                        List.of(device.ref(), zone.controller().ref())));
    }

    /** Sensors on I2C behind a splice, all addresses different. */
    void sensors(int count) {
        Box splice = zone.add("splice", "splice");
        List<String> branches = new ArrayList<>();
        for (int b = 1; b <= AvionicsTypes.BRANCHES; b++) {
            branches.add("s" + b);
        }
        List<String> free = zone.dice().shuffled(branches);
        zone.loom().join("i2c", zone.controller(), "i2c", splice, free.get(0), line());
        List<String> members = new ArrayList<>(List.of(zone.controller().ref() + ":IIC"));
        zone.setting(Row.of("port", "IIC", "rateKbit", 400));
        for (int n = 1; n <= count; n++) {
            String strap = "0x" + Integer.toHexString(0x50 + n);
            boolean twin = n == 1 && zone.dice().chance(0.5);
            Row setting = Row.of("port", "IIC", "rateKbit", 400, "i2cAddress", strap);
            Box sensor = zone.add("bus", twin ? "twin" : "ranger", "ports", List.of(setting));
            zone.loom().join("i2c", splice, free.get(n), sensor, "i", line());
            members.add(sensor.ref() + ":IIC");
        }
        zone.sink()
                .add(
                        "buses",
                        Row.of("name", "sensors " + zone.number(), "kind", "i2c", "rateKbit", 400, "members", members));
    }

    private Cable line() {
        return Cable.signal("i2c", zone.dice().between(80, 150));
    }

    void light() {
        Box light = zone.add("payload", "light");
        Cable cable = Cable.signal("light", zone.dice().between(100, 600));
        zone.loom().join("light", zone.controller(), "ld", light, "l", cable);
    }

    /** A serial link from the controller of the zone before. */
    static void link(Zone before, Zone after) {
        Cable cable = Cable.signal("serial", after.dice().between(300, 900));
        Map<String, String> crossed = Map.of("TX", "RX", "RX", "TX", "0", "0");
        after.loom().join("zone link", before.controller(), "down", after.controller(), "up", cable, crossed);
    }
}
