package ringout.graph;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.index.Walk;

/**
 * A way through the aircraft as a person can follow it with a meter: pins, leads and parts in order.
 *
 * @param steps the steps
 */
public record Trail(List<Step> steps) {
    /** A way of no steps. */
    public static final Trail NONE = new Trail(List.of());

    /** What a step is. */
    public enum Kind {
        /** A pin of a unit, or a joint. */
        PIN,
        /** A lead. */
        LEAD,
        /** A part inside a unit or lead. */
        PART
    }

    /**
     * One step.
     *
     * @param kind what it is
     * @param name its name in the list
     */
    public record Step(Kind kind, String name) {}

    /** The steps of a walk through a wiring; wire ends and points inside units are left out. */
    public static Trail of(Wiring wiring, Walk walk) {
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i <= walk.edgeCount(); i++) {
            if (wiring.isPin(walk.vertex(i))) {
                steps.add(new Step(Kind.PIN, wiring.name(walk.vertex(i))));
            }
            if (i < walk.edgeCount()) {
                step(wiring, walk.edge(i), steps);
            }
        }
        return new Trail(List.copyOf(steps));
    }

    private static void step(Wiring wiring, int edge, List<Step> steps) {
        int ref = wiring.ref(edge);
        if (wiring.kind(edge) == EdgeKind.CONDUCTOR) {
            steps.add(new Step(Kind.LEAD, wiring.wires().get(ref).lead().id()));
        } else if (wiring.kind(edge) == EdgeKind.PART) {
            steps.add(new Step(Kind.PART, partName(wiring, wiring.parts().get(ref))));
        }
    }

    private static String partName(Wiring wiring, Part part) {
        if (part.origin() instanceof Part.Inner inner) {
            return wiring.directory().name(inner.unit()) + " " + inner.part().name();
        }
        if (part.origin() instanceof Part.Terminator terminator) {
            return "terminator of " + wiring.directory().name(terminator.unit());
        }
        return "fuse";
    }

    /** This way and then another. */
    public Trail then(Trail other) {
        List<Step> joined = new ArrayList<>(steps);
        joined.addAll(other.steps);
        return new Trail(List.copyOf(joined));
    }

    /** The names of the steps in order. */
    public List<String> names() {
        return steps.stream().map(Step::name).toList();
    }

    /** The way in one line: {@code RG6-O-1, W78, LGC-PWR-1 = LGC-CMD-2, W81, FC-A1-2}. */
    public String words() {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < steps.size(); i++) {
            if (i > 0) {
                boolean inside =
                        steps.get(i).kind() == Kind.PIN && steps.get(i - 1).kind() == Kind.PIN;
                text.append(inside ? " = " : ", ");
            }
            text.append(steps.get(i).name());
        }
        return text.toString();
    }
}
