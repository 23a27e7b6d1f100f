package ringout.check.build;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import ringout.check.form.Situation;
import ringout.graph.Wiring;
import ringout.graph.order.Covers;
import ringout.model.Datum;
import ringout.model.JointKind;
import ringout.model.Plug;

/** Plugs and joints with leads on them that lie under a lid. */
public final class HiddenSpots {
    private static final List<String> SCREWED = List.of("clamp", "stud", "screw");

    private HiddenSpots() {}

    /**
     * A plug or joint under a lid.
     *
     * @param unit number of the unit or joint
     * @param plug number of the plug; 0 for a joint
     * @param name its name
     * @param cover the first lid that hides it
     */
    public record Spot(int unit, int plug, String name, int cover) {
        /** Its pins. */
        public BitSet pins(Wiring wiring) {
            BitSet pins = new BitSet();
            pins.set(wiring.firstPin(unit, plug), wiring.endPin(unit, plug));
            return pins;
        }

        /** Whether it is held by a screw: a clamp, a stud, or a plug with a torque. */
        public boolean screwed(Situation at) {
            if (at.directory().isJoint(unit)) {
                Datum<JointKind> kind = at.directory().joint(unit).kind();
                return kind.is(JointKind.CLAMP) || kind.is(JointKind.STUD);
            }
            Plug record = at.directory().type(unit).plugs().get(plug);
            String family = record.family().or("").toLowerCase(Locale.ROOT);
            return record.torqueNm().isKnown() || SCREWED.stream().anyMatch(family::contains);
        }
    }

    /** All of them, in the order of the list. A lid that itself lies deeper counts before those over it. */
    public static List<Spot> all(Situation at) {
        Covers covers = Covers.of(at.circuit());
        Wiring wiring = at.wiring();
        List<Spot> spots = new ArrayList<>();
        for (int unit = 0; unit < at.directory().count(); unit++) {
            for (int plug = 0; plug < at.directory().type(unit).plugs().size(); plug++) {
                int cover = deepest(covers, unit, plug);
                if (cover >= 0 && wired(wiring, unit, plug)) {
                    spots.add(new Spot(unit, plug, wiring.plugName(unit, plug), cover));
                }
            }
        }
        return spots;
    }

    private static int deepest(Covers covers, int unit, int plug) {
        int deepest = -1;
        for (int cover = 0; cover < covers.all().size(); cover++) {
            if (covers.hides(cover, unit, plug)
                    && (deepest < 0 || covers.over(cover).contains(deepest))) {
                deepest = cover;
            }
        }
        return deepest;
    }

    private static boolean wired(Wiring wiring, int unit, int plug) {
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            if (wiring.wiresAt(pin).length > 0) {
                return true;
            }
        }
        return false;
    }
}
