package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Situation;
import ringout.model.Unit;
import ringout.model.UnitKind;

/** Terminator plugs aboard that no lead reaches: the likely reason for a bus that lacks one. */
final class LooseTerminators {
    private LooseTerminators() {}

    static List<Unit> of(Situation at) {
        List<Unit> found = new ArrayList<>();
        List<Unit> units = at.aircraft().units();
        for (int unit = 0; unit < units.size(); unit++) {
            if (at.directory().type(unit).kind().is(UnitKind.TERMINATOR)
                    && at.circuit().aboard(unit)
                    && !OpenPlugs.touched(at, unit)) {
                found.add(units.get(unit));
            }
        }
        return found;
    }

    /** The token that findings about a unit without any lead share. */
    static String cause(Unit unit) {
        return unit.ref() + " alone";
    }
}
