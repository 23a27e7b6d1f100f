package ringout.compare.match;

import java.util.List;
import java.util.Map;
import ringout.graph.Wiring;
import ringout.model.Joint;
import ringout.model.Unit;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/**
 * Matches units that nothing in the wiring tells apart, such as two lights on one rail: by what their rows say, else in the
 * order of the rows. One pair at a time, because each pair may tell others apart.
 */
final class Twins {
    private final UnitMatch match;

    Twins(UnitMatch match) {
        this.match = match;
    }

    /** Pairs one unit of the first class with the likeliest of its own. */
    void pairOne(Map<List<Integer>, List<Integer>> classes) {
        classes.entrySet().stream().findFirst().ifPresent(first -> likeliest(first.getKey(), first.getValue()));
    }

    /** Pairs the two rows of one class that agree most. */
    private void likeliest(List<Integer> here, List<Integer> there) {
        int best = -1;
        int unit = here.get(0);
        int found = there.get(0);
        for (int candidate : there) {
            int agrees = agreement(unit, candidate);
            if (agrees > best) {
                best = agrees;
                found = candidate;
            }
        }
        match.pair(unit, found);
    }

    private int agreement(int unit, int found) {
        Object a = row(match.base(), unit);
        Object b = row(match.other(), found);
        int agrees = 0;
        for (Slot slot : Shape.of(a.getClass()).slots()) {
            agrees += slot.kind() != Slot.Kind.SPAN && slot.get(a).equals(slot.get(b)) ? 1 : 0;
        }
        return agrees;
    }

    private static Object row(Wiring wiring, int unit) {
        if (wiring.directory().isJoint(unit)) {
            Joint joint = wiring.directory().joint(unit);
            return joint;
        }
        Unit row = wiring.directory().unit(unit);
        return row;
    }
}
