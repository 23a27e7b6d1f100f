package ringout.compare.match;

import java.util.Arrays;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/** The conductors of each unit, seen from it: own contact, far unit, far contact. */
final class UnitLinks {
    private final Wiring wiring;
    private final int[] starts;
    private final int[] wires;

    UnitLinks(Wiring wiring) {
        this.wiring = wiring;
        starts = new int[wiring.directory().count() + 1];
        for (Wire wire : wiring.wires()) {
            starts[wiring.unitOf(wire.fromPin()) + 1]++;
            starts[wiring.unitOf(wire.toPin()) + 1]++;
        }
        Arrays.parallelPrefix(starts, Integer::sum);
        wires = new int[2 * wiring.wires().size()];
        int[] next = starts.clone();
        for (Wire wire : wiring.wires()) {
            wires[next[wiring.unitOf(wire.fromPin())]++] = 2 * wire.index();
            wires[next[wiring.unitOf(wire.toPin())]++] = 2 * wire.index() + 1;
        }
    }

    int first(int unit) {
        return starts[unit];
    }

    int end(int unit) {
        return starts[unit + 1];
    }

    /** The conductor of one of its links. */
    Wire wire(int link) {
        return wiring.wires().get(wires[link] / 2);
    }

    /** The contact of the unit itself at one of its links. */
    int ownPin(int link) {
        Wire wire = wiring.wires().get(wires[link] / 2);
        return wires[link] % 2 == 0 ? wire.fromPin() : wire.toPin();
    }

    /** The contact at the far end of one of its links. */
    int farPin(int link) {
        Wire wire = wiring.wires().get(wires[link] / 2);
        return wires[link] % 2 == 0 ? wire.toPin() : wire.fromPin();
    }
}
