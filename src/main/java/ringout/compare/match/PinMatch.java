package ringout.compare.match;

import java.util.Arrays;
import ringout.graph.TypeLayout;
import ringout.graph.Wiring;

/** Which contact of one aircraft is which of another: that of the same plug and number of the matched unit. */
final class PinMatch {
    private final int[] to;
    private final int[] back;

    PinMatch(UnitMatch units) {
        Wiring base = units.base();
        Wiring other = units.other();
        to = new int[base.pinCount()];
        back = new int[other.pinCount()];
        Arrays.fill(to, -1);
        Arrays.fill(back, -1);
        for (int unit = 0; unit < base.directory().count(); unit++) {
            if (units.to(unit) >= 0) {
                pair(base, unit, other, units.to(unit));
            }
        }
    }

    private void pair(Wiring base, int unit, Wiring other, int found) {
        TypeLayout here = base.directory().layout(unit);
        TypeLayout there = other.directory().layout(found);
        for (int plug = 0; plug < here.type().plugs().size(); plug++) {
            int twin = there.plug(here.type().plugs().get(plug).name());
            for (int pin = here.firstPin(plug); twin >= 0 && pin < here.endPin(plug); pin++) {
                int match = there.pin(twin, here.pin(pin).number());
                if (match >= 0) {
                    to[base.pinVertex(unit, pin)] = other.pinVertex(found, match);
                    back[other.pinVertex(found, match)] = base.pinVertex(unit, pin);
                }
            }
        }
    }

    int to(int pin) {
        return to[pin];
    }

    int back(int pin) {
        return back[pin];
    }
}
