package ringout.check.installation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import ringout.check.form.Situation;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Joint;
import ringout.model.JointKind;
import ringout.model.Plug;
import ringout.model.UnitType;

/**
 * A contact or joint whose conductors lie under a screw.
 *
 * @param name UNIT-PLUG, UNIT-PLUG-PIN where a plug has several, or the joint
 * @param plug UNIT-PLUG, or the joint
 * @param joint whether it is a joint and not a contact of a unit
 * @param wires the conductors, in the order of the rows
 */
record Screw(String name, String plug, boolean joint, List<Wire> wires) {
    /** All screws aboard under which a conductor lies. */
    static List<Screw> all(Situation at) {
        List<Screw> all = new ArrayList<>();
        Map<String, boolean[]> byType = new HashMap<>();
        Wiring wiring = at.wiring();
        for (int unit = 0; unit < at.directory().count(); unit++) {
            if (!at.circuit().aboard(unit)) {
                continue;
            }
            if (at.directory().isJoint(unit)) {
                if (screwed(at.directory().joint(unit))) {
                    add(all, wiring, at.directory().name(unit), true, wiring.firstPin(unit), wiring.endPin(unit));
                }
            } else if (at.directory().typeKnown(unit)) {
                UnitType type = at.directory().type(unit);
                boolean[] screws = byType.computeIfAbsent(type.name(), key -> screws(type));
                for (int plug = 0; plug < screws.length; plug++) {
                    if (screws[plug]) {
                        String name = wiring.plugName(unit, plug);
                        add(all, wiring, name, false, wiring.firstPin(unit, plug), wiring.endPin(unit, plug));
                    }
                }
            }
        }
        return all;
    }

    private static void add(List<Screw> all, Wiring wiring, String name, boolean joint, int first, int end) {
        for (int pin = first; pin < end; pin++) {
            List<Wire> wires = new ArrayList<>();
            for (int wire : wiring.wiresAt(pin)) {
                wires.add(wiring.wires().get(wire));
            }
            if (!wires.isEmpty()) {
                String screw = end - first > 1 ? wiring.name(pin) : name;
                all.add(new Screw(screw, name, joint, List.copyOf(wires)));
            }
        }
    }

    private static boolean[] screws(UnitType type) {
        List<Plug> plugs = type.plugs();
        boolean[] screws = new boolean[plugs.size()];
        for (int i = 0; i < screws.length; i++) {
            screws[i] = screwed(plugs.get(i));
        }
        return screws;
    }

    /** Whether a plug is a screw: it has a torque, or its family says so. */
    static boolean screwed(Plug plug) {
        String family = plug.family().or("").toLowerCase(Locale.ROOT);
        return plug.torqueNm().isKnown()
                || plug.torqueNm() instanceof Datum.Unknown
                || Stream.of("screw", "stud", "clamp").anyMatch(family::contains);
    }

    private static boolean screwed(Joint joint) {
        return joint.kind().is(JointKind.CLAMP) || joint.kind().is(JointKind.STUD);
    }
}
