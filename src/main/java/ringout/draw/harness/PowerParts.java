package ringout.draw.harness;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntPredicate;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Ties;
import ringout.model.PartKind;

/** Words of parts in a supply, and what a source feeds first. */
final class PowerParts {
    private PowerParts() {}

    /**
     * What a source feeds first.
     *
     * @param pin where it is reached
     * @param wires conductors to it
     * @param through parts on the way
     */
    record Next(int pin, List<Wire> wires, List<Part> through) {}

    /**
     * Whether a part is worth a word: a link inside a unit is not, and diodes are told of
     * the board they join.
     */
    static boolean isTold(Part part) {
        boolean link =
                part.origin() instanceof Part.Inner inner && inner.part().kind().is(PartKind.LINK);
        return !link && !PowerGraph.isDiode(part);
    }

    static boolean isFuse(Part part) {
        return part.origin() instanceof Part.LeadFuse
                || (part.origin() instanceof Part.Inner inner
                        && inner.part().kind().is(PartKind.FUSE));
    }

    /** The rating of a fuse, or of another part that has one. */
    static OptionalDouble rating(Part part) {
        if (part.origin() instanceof Part.LeadFuse fuse) {
            return OptionalDouble.of(fuse.ratingA());
        }
        return part.origin() instanceof Part.Inner inner
                        && inner.part().rating().ratingA().isKnown()
                ? OptionalDouble.of(inner.part().rating().ratingA().or(0.0))
                : OptionalDouble.empty();
    }

    static String name(Part part) {
        if (part.origin() instanceof Part.Inner inner) {
            return inner.part().name();
        }
        return part.origin() instanceof Part.LeadFuse ? "fuse" : "part";
    }

    /** The nearest unit of some kind that a source reaches by leads without passing another source. */
    static Optional<Next> next(Circuit circuit, PowerSource source, IntPredicate wanted) {
        Wiring wiring = circuit.wiring();
        IndexGraph live = circuit.live();
        Map<Integer, List<Wire>> by = new HashMap<>();
        Map<Integer, List<Part>> through = new HashMap<>();
        ArrayDeque<Integer> open = new ArrayDeque<>(List.of(source.plus()));
        by.put(source.plus(), List.of());
        while (!open.isEmpty()) {
            int at = open.remove();
            List<Wire> wires = by.getOrDefault(at, List.of());
            if (!wires.isEmpty() && wiring.isPin(at) && wanted.test(wiring.unitOf(at))) {
                return Optional.of(new Next(at, wires, through.getOrDefault(at, List.of())));
            }
            for (int end = live.endSlot(at), s = live.firstSlot(at); s < end; s = live.nextSlot(s, end)) {
                int edge = live.slotEdge(s);
                boolean part = wiring.kind(edge) == EdgeKind.PART;
                if (by.containsKey(live.slotVertex(s))
                        || (part && !Ties.isTie(wiring.parts().get(wiring.ref(edge))))) {
                    continue;
                }
                List<Wire> more = new ArrayList<>(wires);
                if (wiring.kind(edge) == EdgeKind.CONDUCTOR) {
                    more.add(wiring.wires().get(wiring.ref(edge)));
                }
                List<Part> crossed = new ArrayList<>(through.getOrDefault(at, List.of()));
                if (part) {
                    crossed.add(wiring.parts().get(wiring.ref(edge)));
                }
                through.put(live.slotVertex(s), crossed);
                by.put(live.slotVertex(s), more);
                open.add(live.slotVertex(s));
            }
        }
        return Optional.empty();
    }
}
