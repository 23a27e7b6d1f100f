package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import ringout.check.form.Situation;
import ringout.graph.EdgeKind;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.power.Consumer;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.SupplyTree;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.PartKind;

/** The fuses of a situation, and what each of them feeds by the shortest way. */
final class Fuses {
    /**
     * One fuse.
     *
     * @param part the part
     * @param name as the user would name it: {@code fuse of W64}
     * @param lead the row it sits in, if it sits in one
     * @param unit number of the unit it sits in, or -1
     * @param ratingA its rating
     * @param meltA2s its melting integral
     */
    record Fuse(Part part, String name, Optional<Lead> lead, int unit, Datum<Double> ratingA, Datum<Double> meltA2s) {}

    /** What a fuse feeds: consumers, their loads, and data of what lies between that are missing. */
    static final class Behind {
        final List<Consumer> consumers = new ArrayList<>();
        final List<PlacedLoad> loads = new ArrayList<>();
        final Set<Gap> between = new LinkedHashSet<>();
    }

    private final Situation at;
    private final Map<Integer, Fuse> fuses = new TreeMap<>();
    private final Map<Integer, Behind> behind = new TreeMap<>();
    private final Behind all = new Behind();

    private Fuses(Situation at) {
        this.at = at;
        for (Part part : at.wiring().parts()) {
            if (at.circuit().live().hasEdge(part.edge())) {
                fuse(part).ifPresent(fuse -> fuses.put(part.index(), fuse));
            }
        }
        if (fuses.isEmpty()) {
            return;
        }
        fuses.keySet().forEach(index -> behind.put(index, new Behind()));
        PowerGraph power = PowerGraph.of(at.circuit());
        for (Consumer consumer : power.consumers()) {
            if (at.circuit().aboard(consumer.unit())
                    && (consumer.draws() || !consumer.loads().isEmpty())) {
                all.consumers.add(consumer);
                passed(consumer.plus()).forEach(to -> to.consumers.add(consumer));
            }
        }
        for (PlacedLoad load : power.loads()) {
            if (at.circuit().aboard(load.unit())) {
                all.loads.add(load);
                passed(load.plus()).forEach(to -> to.loads.add(load));
            }
        }
    }

    static Fuses of(Situation at) {
        return new Fuses(at);
    }

    private Optional<Fuse> fuse(Part part) {
        if (part.origin() instanceof Part.LeadFuse fuse) {
            Lead lead = at.wiring().wires().get(fuse.wire()).lead();
            return Optional.of(
                    new Fuse(part, "fuse of " + lead.id(), Optional.of(lead), -1, lead.fuseA(), lead.fuseMeltA2s()));
        }
        if (part.origin() instanceof Part.Inner inner && inner.part().kind().is(PartKind.FUSE)) {
            String name = at.directory().name(inner.unit()) + " " + inner.part().name();
            return Optional.of(new Fuse(
                    part,
                    name,
                    Optional.empty(),
                    inner.unit(),
                    inner.part().rating().ratingA(),
                    inner.part().rating().meltA2s()));
        }
        return Optional.empty();
    }

    /** The fuses on the way to a point, each told what lies between it and the point. */
    private List<Behind> passed(int vertex) {
        SupplyTree tree = PowerGraph.of(at.circuit()).tree();
        List<Behind> passed = new ArrayList<>();
        List<Gap> between = new ArrayList<>();
        for (int v = vertex; v >= 0 && tree.edgeTo(v) >= 0; v = tree.pointBefore(v)) {
            int edge = tree.edgeTo(v);
            if (at.wiring().kind(edge) == EdgeKind.PART) {
                Part part = at.wiring().parts().get(at.wiring().ref(edge));
                efficiency(part).ifPresent(between::add);
                if (behind.containsKey(part.index())) {
                    Behind here = behind.get(part.index());
                    here.between.addAll(between);
                    passed.add(here);
                }
            }
        }
        return passed;
    }

    private Optional<Gap> efficiency(Part part) {
        boolean lacks = part.origin() instanceof Part.Inner inner
                && (inner.part().kind().is(PartKind.REGULATOR)
                        || inner.part().kind().is(PartKind.ISOLATED_CONVERTER))
                && !inner.part().rating().efficiency().isKnown();
        return lacks && part.origin() instanceof Part.Inner inner
                ? Optional.of(new Gap(PowerData.EFFICIENCY, at.directory().name(inner.unit())))
                : Optional.empty();
    }

    /** All fuses in the order of the parts. */
    List<Fuse> all() {
        return List.copyOf(fuses.values());
    }

    /** What a fuse feeds; where two ways feed a point, it is behind the shorter one. A fuse on no shortest way may feed all. */
    Behind behind(Fuse fuse) {
        Behind own = behind.getOrDefault(fuse.part().index(), all);
        return own.consumers.isEmpty() ? all : own;
    }
}
