package ringout.graph.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.model.PinRole;
import ringout.model.Rail;

/** A supply point of a unit type while it is being described: its pins by role, its rail and its 0V. */
final class SupplySpot {
    /** The type names no 0V for it. */
    static final int NO_ZERO = -1;

    /** Spot number in the type: see {@link TypeSupplies}. */
    final int spot;

    final String name;
    final Optional<Rail> rail;
    final List<Integer> inputs = new ArrayList<>();
    final List<Load> loads = new ArrayList<>();
    int zeroSpot = NO_ZERO;
    boolean frameReturn;
    boolean takes;
    boolean gives;
    /** A source or regulator inside gives its voltage. */
    boolean driven;
    /** Some part inside leads from it. */
    boolean feeds;
    /** Some part inside leads to it. */
    boolean fed;

    SupplySpot(int spot, String name, Optional<Rail> rail) {
        this.spot = spot;
        this.name = name;
        this.rail = rail;
    }

    void pin(int pin, PinRole role) {
        switch (role) {
            case SUPPLY_IN -> {
                takes = true;
                inputs.add(pin);
            }
            case SUPPLY_THROUGH -> inputs.add(pin);
            case SUPPLY_OUT, PACK_PLUS -> gives = true;
            default -> {}
        }
    }

    /** Whether the unit takes power here from outside, or draws some here. */
    boolean consumes() {
        return (takes || !driven) && (!inputs.isEmpty() || !loads.isEmpty());
    }

    /** Whether it gives power that nothing inside and nothing outside is known to feed. */
    boolean outputOfUnknown() {
        return gives && inputs.isEmpty() && !fed;
    }
}
