package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Situation;
import ringout.graph.Wiring;
import ringout.graph.signal.SignalWays;
import ringout.model.Pin;
import ringout.model.PinRole;

/** Plugs without a lead. A plug pulled in a state has its lead; it is open on purpose. */
final class OpenPlugs {
    private OpenPlugs() {}

    /** Whether any conductor of the list ends at a unit. */
    static boolean touched(Situation at, int unit) {
        Wiring wiring = at.wiring();
        for (int pin = wiring.firstPin(unit); pin < wiring.endPin(unit); pin++) {
            if (wiring.wiresAt(pin).length > 0) {
                return true;
            }
        }
        return false;
    }

    /** Whether any conductor of the list ends at a plug. */
    static boolean wired(Situation at, int unit, int plug) {
        Wiring wiring = at.wiring();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            if (wiring.wiresAt(pin).length > 0) {
                return true;
            }
        }
        return false;
    }

    /** The tokens of all open plugs of a unit, as findings about open plugs share them. */
    static List<String> causes(Situation at, int unit) {
        List<String> causes = new ArrayList<>();
        for (int plug = 0; plug < at.directory().type(unit).plugs().size(); plug++) {
            if (!wired(at, unit, plug)) {
                causes.add(cause(at, unit, plug));
            }
        }
        return causes;
    }

    /** What open plugs leave their unit without, as findings about its supply and its conductors in clamps share it. */
    static List<String> duties(Situation at, int unit, List<Integer> plugs) {
        String name = at.directory().name(unit);
        List<String> duties = new ArrayList<>();
        for (int plug : plugs) {
            for (Pin pin : at.directory().type(unit).plugs().get(plug).pins()) {
                if (pin.role().is(PinRole.SUPPLY_IN)
                        && !SignalWays.of(at.circuit()).powered(unit)) {
                    duties.add(name + " unfed");
                    duties.add(name + "/supply");
                }
            }
        }
        return duties;
    }

    /** The token that findings about one open plug share. */
    static String cause(Situation at, int unit, int plug) {
        return at.wiring().plugName(unit, plug) + " open";
    }
}
