package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.loss.Items;
import ringout.graph.loss.RotorLoss;
import ringout.graph.signal.MotorDrive;
import ringout.model.Lead;

/**
 * Things over which rotors can be shared anew at no cost: clamps of one unit at one point inside, since a lead moved from one to
 * the other changes nothing else, and buses of one kind that command the motors.
 *
 * @param what what they are, in the plural
 * @param shares the rotors on each
 */
record Siblings(String what, List<Share> shares) {
    /**
     * One of them.
     *
     * @param name its name
     * @param rotors rows of the rotors that stop with it
     * @param takes how many it can take
     * @param leads leads that join them
     */
    record Share(String name, BitSet rotors, int takes, List<Lead> leads) {}

    /** All families of more than one that several rotors hang on. */
    static List<Siblings> of(RotorsLost lost) {
        List<Siblings> found = new ArrayList<>();
        clamps(lost).forEach(found::add);
        buses(lost, found);
        found.removeIf(family -> family.shares().size() < 2
                || family.shares().stream().allMatch(share -> share.rotors().cardinality() < 2)
                || overlap(family));
        return found;
    }

    private static boolean overlap(Siblings family) {
        BitSet seen = new BitSet();
        for (Share share : family.shares()) {
            if (seen.intersects(share.rotors())) {
                return true;
            }
            seen.or(share.rotors());
        }
        return false;
    }

    /** What a clamp holds: places of motors and the leads to them. */
    private record Held(Set<Integer> places, Set<Lead> leads) {}

    private static Collection<Siblings> clamps(RotorsLost lost) {
        Wiring wiring = lost.at.wiring();
        Map<Integer, Integer> placeOf = new TreeMap<>();
        List<RotorLoss.Driven> driven = lost.losses.driven();
        for (int i = 0; i < driven.size(); i++) {
            int place = i;
            MotorDrive drive = driven.get(i).drive();
            drive.controller()
                    .or(() -> lost.at.directory().find(drive.motor().ref()))
                    .ifPresent(unit -> placeOf.put(unit, place));
        }
        Map<List<Integer>, Held> byClamp = new LinkedHashMap<>();
        for (int controller : placeOf.keySet()) {
            for (int pin = wiring.firstPin(controller); pin < wiring.endPin(controller); pin++) {
                for (int w : wiring.wiresAt(pin)) {
                    Wire wire = wiring.wires().get(w);
                    int far = wire.otherPin(pin);
                    if (lost.at.circuit().mated(wire) && clamp(wiring, far)) {
                        Held held = byClamp.computeIfAbsent(
                                List.of(wiring.unitOf(far), point(wiring, far), wiring.plugIndex(far)),
                                key -> new Held(new LinkedHashSet<>(), new LinkedHashSet<>()));
                        held.places().add(placeOf.getOrDefault(controller, -1));
                        held.leads().add(wire.lead());
                    }
                }
            }
        }
        return families(lost, byClamp);
    }

    private static Collection<Siblings> families(RotorsLost lost, Map<List<Integer>, Held> byClamp) {
        Map<List<Integer>, Siblings> families = new LinkedHashMap<>();
        Items items = Items.of(lost.at.circuit());
        byClamp.forEach((key, held) -> {
            Set<Integer> stopped = lost.losses.byItem().getOrDefault(items.plug(key.get(0), key.get(2)), Set.of());
            if (stopped.equals(new TreeSet<>(held.places()))) {
                int drawn = lost.at
                        .directory()
                        .type(key.get(0))
                        .plugs()
                        .get(key.get(2))
                        .conductors()
                        .or(0);
                families.computeIfAbsent(
                                key.subList(0, 2),
                                same -> new Siblings(
                                        "clamps of " + lost.at.directory().name(key.get(0)), new ArrayList<>()))
                        .shares()
                        .add(new Share(
                                lost.at.wiring().plugName(key.get(0), key.get(2)),
                                lost.rows(held.places()),
                                Math.max(1, drawn),
                                List.copyOf(held.leads())));
            }
        });
        return families.values();
    }

    /** Whether a pin is the only one of its plug, at a point inside its unit: a clamp or stud of a bar. */
    private static boolean clamp(Wiring wiring, int pin) {
        int unit = wiring.unitOf(pin);
        if (wiring.directory().isJoint(unit)) {
            return false;
        }
        int plug = wiring.plugIndex(pin);
        return wiring.endPin(unit, plug) - wiring.firstPin(unit, plug) == 1 && point(wiring, pin) >= 0;
    }

    private static int point(Wiring wiring, int pin) {
        return wiring.directory().layout(wiring.unitOf(pin)).pointOf(wiring.localPin(pin));
    }

    private static void buses(RotorsLost lost, List<Siblings> found) {
        List<Share> shares = new ArrayList<>();
        lost.buses().forEach((name, places) -> {
            BitSet rotors = lost.rows(places);
            shares.add(new Share("bus " + name, rotors, rotors.cardinality(), List.of()));
        });
        found.add(new Siblings("buses " + String.join(", ", lost.buses().keySet()), shares));
    }
}
