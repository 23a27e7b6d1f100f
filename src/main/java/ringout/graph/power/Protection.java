package ringout.graph.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import ringout.graph.Circuit;
import ringout.graph.EdgeKind;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.PartKind;

/**
 * Which fuses stand before every conductor on the way of its supply, and how thick the way was before. A regulator starts a new
 * way: what stands before it does not protect what is behind. One pass over the tree of supply.
 */
public final class Protection {
    private static final int NONE = -1;

    /**
     * A conductor on the way of a supply.
     *
     * @param wire the conductor
     * @param end vertex of the end power comes to
     */
    public record Fed(Wire wire, int end) {}

    private final Wiring wiring;
    private final int[] fuse;
    private final int[] thickest;
    private final BitSet regulated = new BitSet();
    private final List<Fed> fed = new ArrayList<>();
    private final List<Part> fuses = new ArrayList<>();

    private Protection(Circuit circuit) {
        wiring = circuit.wiring();
        SupplyTree tree = PowerGraph.of(circuit).tree();
        fuse = new int[wiring.graph().vertexCount()];
        thickest = new int[fuse.length];
        Arrays.fill(fuse, NONE);
        Arrays.fill(thickest, NONE);
        for (int i = 0; i < tree.count(); i++) {
            enter(tree, tree.vertexAt(i));
        }
    }

    /** The protection of a circuit, found once. */
    public static Protection of(Circuit circuit) {
        return circuit.know(Protection.class, Protection::new);
    }

    private void enter(SupplyTree tree, int vertex) {
        int before = tree.pointBefore(vertex);
        if (before < 0) {
            return;
        }
        fuse[vertex] = fuse[before];
        thickest[vertex] = thickest[before];
        regulated.set(vertex, regulated.get(before));
        int edge = tree.edgeTo(vertex);
        if (wiring.kind(edge) == EdgeKind.CONDUCTOR) {
            Wire wire = wiring.wires().get(wiring.ref(edge));
            fed.add(new Fed(wire, vertex));
            thickest[vertex] = thicker(thickest[before], wire);
        } else if (wiring.kind(edge) == EdgeKind.PART) {
            pass(wiring.parts().get(wiring.ref(edge)), vertex);
        }
    }

    private int thicker(int before, Wire wire) {
        double area = wire.areaMm2().or(0.0);
        return before == NONE || area > wiring.wires().get(before).areaMm2().or(0.0) ? wire.index() : before;
    }

    private void pass(Part part, int vertex) {
        if (isFuse(part)) {
            fuse[vertex] = part.index();
            fuses.add(part);
        } else if (part.origin() instanceof Part.Inner inner
                && regulates(inner.part().kind())) {
            fuse[vertex] = NONE;
            thickest[vertex] = NONE;
            regulated.set(vertex);
        }
    }

    private static boolean regulates(Datum<PartKind> kind) {
        return kind.is(PartKind.REGULATOR)
                || kind.is(PartKind.LINEAR_REGULATOR)
                || kind.is(PartKind.ISOLATED_CONVERTER);
    }

    /** Whether a part is a fuse, in a lead or in a unit. */
    public static boolean isFuse(Part part) {
        return part.origin() instanceof Part.LeadFuse
                || (part.origin() instanceof Part.Inner inner
                        && inner.part().kind().is(PartKind.FUSE));
    }

    /** The rating of a fuse in A. */
    public Datum<Double> rating(Part of) {
        if (of.origin() instanceof Part.LeadFuse inLead) {
            return wiring.wires().get(inLead.wire()).lead().fuseA();
        }
        return of.origin() instanceof Part.Inner inner ? inner.part().rating().ratingA() : Datum.notAsked();
    }

    /** The conductors power passes, each after the one it is fed through. */
    public List<Fed> fed() {
        return List.copyOf(fed);
    }

    /** The fuses power passes, each after those before it. */
    public List<Part> fuses() {
        return List.copyOf(fuses);
    }

    /** The nearest fuse before a point on its rail, if there is one. */
    public Optional<Part> fuseBefore(int vertex) {
        return fuse[vertex] < 0 ? Optional.empty() : Optional.of(wiring.parts().get(fuse[vertex]));
    }

    /** The fuses before a point on its rail, nearest first. */
    public List<Part> fusesBefore(int vertex, SupplyTree tree) {
        List<Part> found = new ArrayList<>();
        Optional<Part> next = fuseBefore(vertex);
        while (next.isPresent()) {
            found.add(next.get());
            next = fuseBefore(entry(next.get(), tree));
        }
        return found;
    }

    /** The point of a fuse power comes from. */
    private static int entry(Part part, SupplyTree tree) {
        return tree.edgeTo(part.to()) == part.edge() ? part.from() : part.to();
    }

    /** The thickest conductor up to a point since the last pack or regulator, that of the point included. */
    public OptionalInt thickestTo(int vertex) {
        return thickest[vertex] < 0 ? OptionalInt.empty() : OptionalInt.of(thickest[vertex]);
    }

    /** Whether a regulator stands between the packs and a point. */
    public boolean regulated(int vertex) {
        return regulated.get(vertex);
    }
}
