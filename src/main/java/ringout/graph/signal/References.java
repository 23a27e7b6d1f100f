package ringout.graph.signal;

import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.power.Ties;
import ringout.model.PinRole;

/**
 * Which 0V points are one reference: nets joined by conductors, and by parts of low resistance such as a sense resistor in the return, a link, a closed fuse or switch.
 */
public final class References {
    private static final int NONE = -1;

    private final Circuit circuit;
    private final Ties ties;

    private References(Circuit circuit) {
        this.circuit = circuit;
        this.ties = Ties.of(circuit);
    }

    /** The references of a circuit, found once. */
    public static References of(Circuit circuit) {
        return circuit.know(References.class, References::new);
    }

    /** The 0V pin a signal pin goes with: of its plug, else of its unit; -1 when the unit has none. */
    public int zeroPin(int pin) {
        Wiring wiring = circuit.wiring();
        int unit = wiring.unitOf(pin);
        int plug = wiring.plugIndex(pin);
        int own = zero(wiring.firstPin(unit, plug), wiring.endPin(unit, plug));
        return own != NONE ? own : zero(wiring.firstPin(unit), wiring.endPin(unit));
    }

    private int zero(int first, int end) {
        for (int pin = first; pin < end; pin++) {
            if (circuit.wiring().is(pin, PinRole.ZERO_V)) {
                return pin;
            }
        }
        return NONE;
    }

    /** Whether two points have one reference. */
    public boolean same(int a, int b) {
        return ties.same(a, b);
    }
}
