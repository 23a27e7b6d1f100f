package ringout.check.installation;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import ringout.check.form.Situation;
import ringout.graph.Directory;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Joint;
import ringout.model.JointKind;
import ringout.model.Plug;

/**
 * One contact, clamp, stud or splice and the conductors that end in it, whatever the state takes off.
 *
 * @param pin vertex of the pin
 * @param unit number of the unit or joint
 * @param name as the user writes it: UNIT-PLUG, UNIT-PLUG-PIN when the plug has several pins, or the joint
 * @param drawn number of conductors it is drawn for
 * @param screw whether conductors lie under a screw here, or may
 * @param crimp whether it is a contact made for one conductor
 * @param wires the conductors, in the order of the rows
 */
record Clamp(int pin, int unit, String name, Datum<Integer> drawn, boolean screw, boolean crimp, List<Wire> wires) {
    /** All clamps, joints and shared contacts of units aboard in which a conductor ends. */
    static List<Clamp> all(Situation at) {
        List<Clamp> all = new ArrayList<>();
        Wiring wiring = at.wiring();
        for (int pin = 0; pin < wiring.pinCount(); pin++) {
            int count = wiring.wiresAt(pin).length;
            if (count > 0 && (count > 1 || says(wiring, pin)) && at.circuit().aboard(wiring.unitOf(pin))) {
                all.add(of(wiring, pin));
            }
        }
        return all;
    }

    /** Whether something is to be said of it with one conductor: it is a joint, or tells how many it is drawn for. */
    private static boolean says(Wiring wiring, int pin) {
        return wiring.directory().isJoint(wiring.unitOf(pin)) || asked(wiring.plug(pin));
    }

    private static Clamp of(Wiring wiring, int pin) {
        List<Wire> wires = new ArrayList<>();
        for (int w : wiring.wiresAt(pin)) {
            wires.add(wiring.wires().get(w));
        }
        int unit = wiring.unitOf(pin);
        Directory directory = wiring.directory();
        if (directory.isJoint(unit)) {
            Joint joint = directory.joint(unit);
            boolean screw = joint.kind().is(JointKind.CLAMP) || joint.kind().is(JointKind.STUD);
            return new Clamp(pin, unit, joint.id(), joint.conductors(), screw, false, List.copyOf(wires));
        }
        Plug plug = wiring.plug(pin);
        boolean clamp = asked(plug) || screwed(plug);
        boolean single = plug.pins().size() == 1;
        String name = single ? wiring.plugName(unit, wiring.plugIndex(pin)) : wiring.name(pin);
        boolean crimp = !clamp && (!single || plug.family().isKnown());
        return new Clamp(pin, unit, name, plug.conductors(), !crimp, crimp, List.copyOf(wires));
    }

    /** Whether it is drawn for a number, known or marked "?". */
    private static boolean asked(Plug plug) {
        return plug.conductors().isKnown() || plug.conductors() instanceof Datum.Unknown;
    }

    private static boolean screwed(Plug plug) {
        String family = plug.family().or("").toLowerCase(Locale.ROOT);
        return family.contains("clamp") || family.contains("screw") || family.contains("stud");
    }

    /** What it is: a splice has no screw, and all that is drawn for a number else is a clamp. */
    String word() {
        return screw || crimp ? "clamp" : "splice";
    }

    /** Number of conductors. */
    int count() {
        return wires.size();
    }

    /** Whether the count is not what is drawn; an empty clamp is none. */
    boolean isWrong() {
        return drawn.isKnown() && drawn.or(0) != count();
    }

    /** Conductors too many, or negative when there are too few. */
    int surplus() {
        return count() - drawn.or(count());
    }

    /** Number of contacts at the other ends: a row written twice is no second conductor (T19). */
    int farPins() {
        return (int)
                wires.stream().mapToInt(wire -> wire.otherPin(pin)).distinct().count();
    }

    /** Numbers of the units at the other ends. */
    Set<Integer> farUnits(Wiring wiring) {
        Set<Integer> units = new LinkedHashSet<>();
        wires.forEach(wire -> units.add(wiring.unitOf(wire.otherPin(pin))));
        return units;
    }

    /** Whether the conductors share this contact by declaration: all but one of their leads say so. */
    boolean isShared() {
        return wires.stream()
                        .filter(wire -> !wire.lead().sharedPins().or(false))
                        .count()
                <= 1;
    }
}
