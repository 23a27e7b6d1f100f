package ringout.check.installation;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Situation;
import ringout.graph.Wire;
import ringout.model.Unit;

/**
 * Which conductor is missing in a clamp, or too much, by the clamp of the other polarity: plus and minus of one unit sit in
 * clamps with the same neighbours.
 */
final class ClampMates {
    private final Situation at;
    private final List<Clamp> clamps;

    ClampMates(Situation at, List<Clamp> clamps) {
        this.at = at;
        this.clamps = clamps;
    }

    /** Units that have a conductor in the clamp of the other polarity but none here. */
    Set<Integer> missing(Clamp clamp) {
        return mate(clamp)
                .map(mate -> without(mate.farUnits(at.wiring()), clamp.farUnits(at.wiring())))
                .orElse(Set.of());
    }

    /** Conductors here of units that have none in the clamp of the other polarity. */
    List<Wire> extra(Clamp clamp) {
        Optional<Clamp> mate = mate(clamp);
        if (mate.isEmpty()) {
            return List.of();
        }
        Set<Integer> odd = without(clamp.farUnits(at.wiring()), mate.get().farUnits(at.wiring()));
        return clamp.wires().stream()
                .filter(wire -> odd.contains(at.wiring().unitOf(wire.otherPin(clamp.pin()))))
                .toList();
    }

    /** The clamp of the same unit, on another net and rightly filled, that shares most far units. */
    private Optional<Clamp> mate(Clamp clamp) {
        Clamp best = clamp;
        int most = 0;
        for (Clamp other : clamps) {
            boolean opposite = other.unit() == clamp.unit()
                    && other.drawn().isKnown()
                    && !other.isWrong()
                    && !at.circuit().nets().same(other.pin(), clamp.pin());
            if (opposite) {
                Set<Integer> shared = other.farUnits(at.wiring());
                shared.retainAll(clamp.farUnits(at.wiring()));
                if (shared.size() > most) {
                    most = shared.size();
                    best = other;
                }
            }
        }
        return most == 0 ? Optional.empty() : Optional.of(best);
    }

    private static Set<Integer> without(Set<Integer> all, Set<Integer> some) {
        Set<Integer> rest = new LinkedHashSet<>(all);
        rest.removeAll(some);
        return rest;
    }

    /** Whether flight depends on a unit whose conductor ends in a clamp, or on the clamp's own unit. */
    boolean flightCritical(Clamp clamp) {
        Set<Integer> units = new TreeSet<>(clamp.farUnits(at.wiring()));
        units.addAll(missing(clamp));
        units.add(clamp.unit());
        return units.stream()
                .filter(unit -> !at.directory().isJoint(unit))
                .map(at.directory()::unit)
                .map(Unit::ref)
                .anyMatch(at::flightCritical);
    }
}
