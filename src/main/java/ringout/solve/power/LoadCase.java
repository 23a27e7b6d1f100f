package ringout.solve.power;

import java.util.Collection;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import ringout.model.Event;

/**
 * What is asked of an aircraft in one state: how far the packs are charged, what the loads draw, how warm the conductors
 * are. Two equal cases of one circuit are solved once.
 *
 * @param level what the loads draw that nothing else is said of
 * @param peaking units at their peak, whatever the level
 * @param event declared event: its loads draw what it says
 * @param charge how far the packs are charged
 * @param wires temperature of the conductors
 */
public record LoadCase(
        LoadLevel level, SortedSet<String> peaking, Optional<Event> event, PackCharge charge, WireTemperature wires) {
    /** All loads at their average, packs at nominal voltage, conductors at 20 degC. */
    public static final LoadCase AVERAGE = of(LoadLevel.AVERAGE);

    /** All loads switched on and at rest. */
    public static final LoadCase IDLE = of(LoadLevel.IDLE);

    /** All loads at their peak at once, which no declared event may ask for. */
    public static final LoadCase PEAK = of(LoadLevel.PEAK);

    /** Keeps its own copy of the units. */
    public LoadCase {
        peaking = Collections.unmodifiableSortedSet(new TreeSet<>(peaking));
    }

    /** {@return all loads at one level, packs at nominal voltage, conductors at 20 degC} */
    public static LoadCase of(LoadLevel level) {
        return new LoadCase(level, new TreeSet<>(), Optional.empty(), PackCharge.NOMINAL, WireTemperature.REFERENCE);
    }

    /** {@return the same with an event going on} */
    public LoadCase during(Event happening) {
        return new LoadCase(level, peaking, Optional.of(happening), charge, wires);
    }

    /** {@return the same with some units at their peak} */
    public LoadCase peaking(Collection<String> units) {
        return new LoadCase(level, new TreeSet<>(units), event, charge, wires);
    }

    /** {@return the same with the packs charged so far} */
    public LoadCase with(PackCharge charged) {
        return new LoadCase(level, peaking, event, charged, wires);
    }

    /** {@return the same with conductors of that temperature} */
    public LoadCase with(WireTemperature warm) {
        return new LoadCase(level, peaking, event, charge, warm);
    }

    // Written out, since cases are looked up all the time; the generated methods are slow to be linked.
    @Override
    public boolean equals(Object other) {
        return this == other
                || (other instanceof LoadCase that
                        && level == that.level
                        && wires == that.wires
                        && charge.equals(that.charge)
                        && peaking.equals(that.peaking)
                        && event.equals(that.event));
    }

    @Override
    public int hashCode() {
        int what = 31 * level.hashCode() + wires.hashCode();
        return (31 * (31 * what + charge.hashCode()) + peaking.hashCode()) * 31 + event.hashCode();
    }
}
