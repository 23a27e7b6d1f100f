package ringout.compare.match;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.Wire;
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
    private final UnitLinks base;
    private final UnitLinks other;

    Twins(UnitMatch match) {
        this.match = match;
        this.base = new UnitLinks(match.base());
        this.other = new UnitLinks(match.other());
    }

    /**
     * Pairs every unit of the classes that hang on nothing but matched units with the likeliest of its own; where there is no
     * such class, one unit of the first class.
     */
    void pair(Map<List<Integer>, List<Integer>> classes) {
        boolean any = false;
        for (Map.Entry<List<Integer>, List<Integer>> one : classes.entrySet()) {
            if (one.getKey().stream().allMatch(this::settledAround)) {
                List<Integer> there = new ArrayList<>(one.getValue());
                for (int unit : one.getKey()) {
                    if (!there.isEmpty()) {
                        there.remove(Integer.valueOf(likeliest(unit, there)));
                    }
                }
                any = true;
            }
        }
        if (!any) {
            classes.entrySet().stream()
                    .findFirst()
                    .ifPresent(first -> likeliest(first.getKey().get(0), first.getValue()));
        }
    }

    private boolean settledAround(int unit) {
        for (int link = base.first(unit); link < base.end(unit); link++) {
            if (match.to(match.base().unitOf(base.farPin(link))) < 0) {
                return false;
            }
        }
        return true;
    }

    /** Pairs a unit with the one whose row and leads agree most. */
    private int likeliest(int unit, List<Integer> there) {
        int best = -1;
        int found = there.get(0);
        for (int candidate : there) {
            int agrees = agreement(unit, candidate);
            if (agrees > best) {
                best = agrees;
                found = candidate;
            }
        }
        match.pair(unit, found);
        return found;
    }

    private int agreement(int unit, int found) {
        Object a = row(match.base(), unit);
        Object b = row(match.other(), found);
        int agrees = 0;
        for (Slot slot : Shape.of(a.getClass()).slots()) {
            agrees += slot.kind() != Slot.Kind.SPAN && slot.get(a).equals(slot.get(b)) ? 1 : 0;
        }
        return agrees + leads(unit, found);
    }

    /** Conductors from the same contact of the same length and size. */
    private int leads(int unit, int found) {
        Set<String> here = makes(match.base(), base, unit);
        here.retainAll(makes(match.other(), other, found));
        return here.size();
    }

    private static Set<String> makes(Wiring wiring, UnitLinks links, int unit) {
        Set<String> makes = new HashSet<>();
        for (int link = links.first(unit); link < links.end(unit); link++) {
            Wire wire = links.wire(link);
            makes.add(wiring.plug(links.ownPin(link)).name() + " "
                    + wiring.pin(links.ownPin(link)).number() + " "
                    + wire.lengthMm().known() + " "
                    + wire.areaMm2().known());
        }
        return makes;
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
