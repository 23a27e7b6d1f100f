package ringout.synthetic;

import java.util.ArrayList;
import java.util.List;

/** Builds one zone: what every zone has, then more of this and that until it has the conductors asked for. */
final class ZoneBuilder {
    /** Most nodes on the chain, so that the supply it passes is not overloaded. */
    private static final int MOST_NODES = 6;

    private final Zone zone;
    private final AvionicsPart avionics;
    private final PayloadPart payload;
    private final List<Object> outputs = new ArrayList<>();
    private final List<Option> options = new ArrayList<>();

    /** Something more a zone may have. */
    private interface Option {
        /** Builds one, if there is room; whether another may follow. */
        boolean build();
    }

    private ZoneBuilder(Zone zone) {
        this.zone = zone;
        this.avionics = new AvionicsPart(zone);
        this.payload = new PayloadPart(zone);
        options.add(() -> avionics.canSerial() && told(avionics::serial));
        options.add(() -> payload.has(1) && told(payload::lamp));
        options.add(() -> payload.has(2) && told(payload::video));
        options.add(() -> payload.has(1) && told(payload::splicedLamps));
        options.add(() -> payload.canConvert() && told(payload::isolated));
        options.add(() -> once(avionics::light));
        options.add(() -> once(() -> avionics.sensors(zone.dice().between(1, AvionicsTypes.BRANCHES - 1))));
        options.add(() -> zone.freeOutlets() > 0 && once(() -> outputs.add(payload.gear())));
        options.add(() -> once(() -> zone.add("payload", "beacon", "standAlone", true)));
    }

    /** Builds a zone that brings the conductors of the loom near to a number. */
    static void build(Zone zone, DrivePart.Ring ring, int conductors) {
        new ZoneBuilder(zone).run(ring, conductors);
    }

    private void run(DrivePart.Ring ring, int conductors) {
        PowerPart.build(zone);
        outputs.addAll(DrivePart.build(zone, ring));
        avionics.receiver();
        boolean small = conductors - zone.loom().conductors() < 50;
        BusPart.build(
                zone,
                small ? 2 : zone.dice().between(2, MOST_NODES),
                !small && zone.dice().chance(0.4));
        while (zone.loom().conductors() < conductors && !options.isEmpty()) {
            int next = zone.dice().below(options.size());
            if (!options.get(next).build()) {
                options.remove(next);
            }
        }
        zone.unit(
                zone.controller(),
                "ports",
                zone.settings(),
                "outputs",
                List.copyOf(outputs),
                "headingDeg",
                0,
                "rollDeg",
                0,
                "orientationSetting",
                "0");
    }

    private static boolean told(Runnable work) {
        work.run();
        return true;
    }

    private static boolean once(Runnable work) {
        work.run();
        return false;
    }
}
