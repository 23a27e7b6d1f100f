package ringout.synthetic;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The unit types one group of zones is built from. */
final class TypeBook {
    private final Map<String, UnitType> types = new TreeMap<>();
    private final boolean twoSockets;

    TypeBook(Style style, int number) {
        String suffix = "/" + number;
        this.twoSockets = style.dice().chance(0.5);
        Pins pins = new Pins(style);
        PowerTypes power = new PowerTypes(style, pins, suffix);
        types.put("pack", power.pack(false));
        types.put("last pack", power.pack(true));
        types.put("board", power.board());
        types.put("monitor", power.monitor());
        types.put("shunt", power.shunt());
        types.put("reg12", power.regulator("REG12", Rails.TWELVE, 12, 14, 6));
        types.put("reg6", power.regulator("REG6", Rails.SIX, 6, 8, 1));
        types.put("isolated", power.isolated());
        DriveTypes drive = new DriveTypes(style, pins, suffix);
        types.put("drive", style.busDriven() ? drive.bus() : drive.pulse());
        types.put("motor CW", drive.motor("CW"));
        types.put("motor CCW", drive.motor("CCW"));
        avionics(new AvionicsTypes(style, pins, suffix));
        BusTypes bus = new BusTypes(style, pins, suffix);
        types.put("through", bus.through());
        types.put("own", bus.own());
        types.put("leaf", bus.leaf());
        types.put("tee", bus.tee());
        types.put("terminator", bus.terminator());
        PayloadTypes payload = new PayloadTypes(style, pins, suffix);
        types.put("lamp", payload.lamp());
        types.put("camera", payload.camera());
        types.put("transmitter", payload.transmitter());
        types.put("heater", payload.heater());
        types.put("gear", payload.gear());
        types.put("actuator", payload.actuator());
        types.put("beacon", payload.beacon());
    }

    private void avionics(AvionicsTypes avionics) {
        types.put("controller", avionics.controller(twoSockets));
        types.put("receiver", avionics.receiver());
        types.put("serial self", avionics.serial(false));
        types.put("serial peer", avionics.serial(true));
        types.put("light", avionics.light());
        types.put("ranger", avionics.ranger());
        types.put("twin", avionics.twin());
        types.put("splice", avionics.splice());
    }

    /** Whether the controller has two sockets on its bus. */
    boolean twoSockets() {
        return twoSockets;
    }

    UnitType type(String use) {
        UnitType type = types.get(use);
        if (type == null) {
            throw new IllegalArgumentException("no type for " + use);
        }
        return type;
    }

    List<UnitType> all() {
        return List.copyOf(types.values());
    }
}
