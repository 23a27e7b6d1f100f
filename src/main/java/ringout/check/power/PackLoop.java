package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import ringout.check.form.Situation;
import ringout.graph.EdgeKind;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.Walk;
import ringout.graph.power.PowerGraph;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.solve.Resistivity;

/**
 * The loop of two packs side by side: both packs, and the leads and contacts between them.
 *
 * @param ohm its resistance in ohm, as far as it is known
 * @param usualOhm the part of it that contacts add of which only the usual value is known
 * @param usual those contacts
 * @param missing what is missing of it
 * @param assumed whether a part of it is assumed
 * @param trail from the plus of one pack to that of the other
 */
record PackLoop(double ohm, double usualOhm, List<Gap> usual, List<Gap> missing, boolean assumed, Trail trail) {
    private static final double MILLI = 0.001;

    /** The loop over two ties, and through some packs. */
    static PackLoop of(Situation at, int topA, int topB, int bottomA, int bottomB, Stream<Pack> packs) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Sum sum = new Sum(at.wiring());
        Optional<Walk> above = power.walk(topA, topB);
        above.ifPresent(sum::along);
        power.walk(bottomA, bottomB).ifPresent(sum::along);
        packs.forEach(sum::pack);
        return new PackLoop(
                sum.ohm,
                sum.usualOhm,
                List.copyOf(sum.usual),
                List.copyOf(sum.missing),
                sum.assumed,
                above.map(walk -> Trail.of(at.wiring(), walk)).orElse(Trail.NONE));
    }

    /** Whether nothing is missing. */
    boolean known() {
        return missing.isEmpty();
    }

    /** Adds up resistances on the way. */
    private static final class Sum {
        private final Wiring wiring;
        private final List<Gap> missing = new ArrayList<>();
        private final Set<Gap> usual = new LinkedHashSet<>();
        private double ohm;
        private double usualOhm;
        private boolean assumed;

        Sum(Wiring wiring) {
            this.wiring = wiring;
        }

        void pack(Pack pack) {
            Datum<Double> inside = pack.source().milliohm();
            if (inside.isKnown()) {
                ohm += inside.or(0.0) * MILLI;
                assumed |= inside.source() == Origin.ASSUMED;
            } else {
                missing.add(new Gap(PowerData.PACK_OHM, pack.name()));
            }
        }

        void along(Walk walk) {
            for (int i = 0; i < walk.edgeCount(); i++) {
                edge(walk, i);
            }
        }

        private void edge(Walk walk, int i) {
            int edge = walk.edge(i);
            EdgeKind kind = wiring.kind(edge);
            if (kind == EdgeKind.CONDUCTOR) {
                wire(wiring.wires().get(wiring.ref(edge)));
            } else if (kind == EdgeKind.CONTACT) {
                int pin = wiring.isPin(walk.vertex(i)) ? walk.vertex(i) : walk.vertex(i + 1);
                contact(pin);
            } else if (kind == EdgeKind.PART) {
                part(wiring.parts().get(wiring.ref(edge)));
            }
        }

        private void contact(int pin) {
            double contact = Resistivity.contactOhm(wiring, pin);
            ohm += contact;
            if (!Resistivity.contactKnown(wiring, pin)) {
                usualOhm += contact;
                usual.add(new Gap(PowerData.CONTACT, wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin))));
            }
        }

        private void wire(Wire wire) {
            if (Resistivity.isKnown(wire)) {
                ohm += Resistivity.ohm(wire);
                assumed |= wire.lengthMm().source() == Origin.ASSUMED;
                return;
            }
            if (!wire.areaMm2().isKnown()) {
                missing.add(new Gap("wire size", wire.lead().id()));
            }
            if (!wire.lengthMm().isKnown()) {
                missing.add(new Gap(PowerData.LENGTH, wire.lead().id()));
            }
        }

        /** What a fuse or switch on the way adds counts as none where nobody tells: the current is larger then. */
        private void part(Part part) {
            if (part.origin() instanceof Part.Inner inner) {
                ohm += inner.part().rating().milliohm().or(0.0) * MILLI;
            }
        }
    }
}
