package ringout.solve.power;

import java.util.Arrays;
import java.util.BitSet;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.index.IndexGraph;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Datum;
import ringout.solve.PartResistance;
import ringout.solve.Resistivity;
import ringout.solve.network.Condensed;

/**
 * Conductors, contacts, joins and all parts that are resistances, within reach of power, as one network made small. The
 * same in all cases of loads at one temperature of the conductors.
 */
final class ConductorNet {
    static final int NONE = -1;

    private final Circuit circuit;
    private final Wiring wiring;
    private final PowerDomain domain;
    private final WireTemperature warm;
    private final Assumptions assumed = new Assumptions();
    private final int[] row;
    private final int[] from;
    private final int[] to;
    private final double[] ohms;
    private final Condensed small;

    ConductorNet(Circuit circuit, WireTemperature warm) {
        this.circuit = circuit;
        this.warm = warm;
        wiring = circuit.wiring();
        domain = PowerDomain.of(circuit);
        IndexGraph live = circuit.live();
        int bound = live.edgeBound();
        row = new int[bound];
        Arrays.fill(row, NONE);
        int[] a = new int[bound];
        int[] b = new int[bound];
        double[] ohm = new double[bound];
        int rows = 0;
        for (int edge = 0; edge < bound; edge++) {
            int first = live.hasEdge(edge) ? domain.node(live.from(edge)) : PowerDomain.OUTSIDE;
            if (first != PowerDomain.OUTSIDE && domain.holds(live.to(edge))) {
                double resistance = ohm(edge);
                if (!Double.isNaN(resistance)) {
                    a[rows] = first;
                    b[rows] = domain.node(live.to(edge));
                    ohm[rows] = Math.max(0, resistance);
                    row[edge] = rows++;
                }
            }
        }
        from = Arrays.copyOf(a, rows);
        to = Arrays.copyOf(b, rows);
        ohms = Arrays.copyOf(ohm, rows);
        small = Condensed.of(domain.count(), from, to, ohms, terminals());
    }

    /** {@return the resistance of an edge; not a number when it is none} */
    private double ohm(int edge) {
        int ref = wiring.ref(edge);
        return switch (wiring.kind(edge)) {
            case CONDUCTOR -> conductor(wiring.wires().get(ref));
            case CONTACT -> contact(edge);
            case JOIN -> 0;
            case PART -> part(wiring.parts().get(ref));
        };
    }

    private double conductor(Wire wire) {
        if (!Resistivity.isKnown(wire)) {
            boolean length = !wire.lengthMm().isKnown();
            assumed.add(length ? "length" : "wire size", wire.lead().id(), 0, "mOhm");
        }
        return Resistivity.ohm(wire, warm.of(wire));
    }

    private double contact(int edge) {
        int a = wiring.graph().from(edge);
        return Resistivity.contactOhm(
                wiring, wiring.isPin(a) ? a : wiring.graph().to(edge));
    }

    private double part(Part part) {
        if (part.origin() instanceof Part.Inner inner
                && inner.part().rating().milliohm() instanceof Datum.Unknown
                && PartResistance.given(inner.part().rating()).isEmpty()) {
            assumed.add(
                    "resistance of " + inner.part().name(), wiring.directory().name(inner.unit()), 0, "mOhm");
        }
        OptionalDouble ohm = PowerDomain.conducts(part) ? PartResistance.ohm(part) : OptionalDouble.empty();
        return ohm.orElse(Double.NaN);
    }

    /** Nodes that a source, a load, a regulator or a diode stands on. */
    private BitSet terminals() {
        BitSet kept = new BitSet();
        PowerGraph power = PowerGraph.of(circuit);
        for (PowerSource source : power.sources()) {
            keep(kept, source.plus());
            keep(kept, source.minus());
        }
        for (PlacedLoad load : power.loads()) {
            keep(kept, load.plus());
            keep(kept, load.zero());
        }
        for (Part part : wiring.parts()) {
            if (PowerDomain.conducts(part) && PartResistance.ohm(part).isEmpty()) {
                keep(kept, part.from());
                keep(kept, part.to());
                keep(kept, part.zero());
            }
        }
        PartElements.inputZeros(circuit).forEach(zero -> keep(kept, zero));
        return kept;
    }

    private void keep(BitSet kept, int vertex) {
        if (domain.holds(vertex)) {
            kept.set(domain.node(vertex));
        }
    }

    /** {@return the small network} */
    Condensed small() {
        return small;
    }

    /** {@return the place of an edge among the resistances, or {@link #NONE} when it is none} */
    int row(int edge) {
        return row[edge];
    }

    /** {@return the resistance of a row in ohms} */
    double ohms(int at) {
        return ohms[at];
    }

    /** {@return what had to be assumed of conductors} */
    Assumptions assumed() {
        return assumed;
    }
}
