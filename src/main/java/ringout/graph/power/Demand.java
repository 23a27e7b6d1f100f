package ringout.graph.power;

import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import ringout.graph.Part;
import ringout.model.Datum;
import ringout.model.PartKind;

/**
 * What flows to every supply point along the tree of supply: its own loads and all behind it. A regulator takes at its
 * input the power of its output over its efficiency. A first estimate that needs no network: currents that split between
 * two sources are put on the nearer one.
 */
public final class Demand {
    private final SupplyTree tree;
    private final Potentials potentials;
    private final Ties ties;
    private final double[] average;
    private final double[] peak;
    /** Points behind which an average is missing. */
    private final BitSet averageOpen = new BitSet();

    private final BitSet peakOpen = new BitSet();

    Demand(int vertices, SupplyTree tree, Ties ties, Potentials potentials, List<Consumer> consumers) {
        this.tree = tree;
        this.ties = ties;
        this.potentials = potentials;
        average = new double[vertices];
        peak = new double[vertices];
        consumers.forEach(this::own);
        for (int i = tree.count() - 1; i >= 0; i--) {
            pass(tree.vertexAt(i));
        }
    }

    private void own(Consumer consumer) {
        int at = consumer.plus();
        if (consumer.loads().isEmpty() && consumer.draws()) {
            averageOpen.set(at);
            peakOpen.set(at);
        }
        OptionalDouble volts = nominal(consumer.plus(), consumer.zero());
        for (Load load : consumer.loads()) {
            add(average, averageOpen, at, load.average(volts));
            add(peak, peakOpen, at, load.peak(volts));
        }
    }

    private static void add(double[] sums, BitSet open, int at, OptionalDouble amps) {
        if (amps.isPresent()) {
            sums[at] += amps.getAsDouble();
        } else {
            open.set(at);
        }
    }

    private OptionalDouble nominal(int plus, int zero) {
        if (zero < 0) {
            return OptionalDouble.empty();
        }
        return potentials
                .between(ties.of(plus), ties.of(zero))
                .map(Volts::nominal)
                .orElse(OptionalDouble.empty());
    }

    private void pass(int vertex) {
        int before = tree.pointBefore(vertex);
        if (before < 0) {
            return;
        }
        OptionalDouble gain = tree.partTo(vertex).map(this::gain).orElse(OptionalDouble.of(1));
        boolean known = gain.isPresent() || (average[vertex] == 0 && peak[vertex] == 0);
        average[before] += average[vertex] * gain.orElse(0);
        peak[before] += peak[vertex] * gain.orElse(0);
        averageOpen.set(before, averageOpen.get(before) || averageOpen.get(vertex) || !known);
        peakOpen.set(before, peakOpen.get(before) || peakOpen.get(vertex) || !known);
    }

    /** Input current over output current of a part. */
    private OptionalDouble gain(Part part) {
        if (!(part.origin() instanceof Part.Inner inner)) {
            return OptionalDouble.of(1);
        }
        PartKind kind = inner.part().kind().or(PartKind.LINK);
        if (kind != PartKind.REGULATOR && kind != PartKind.ISOLATED_CONVERTER) {
            return OptionalDouble.of(1);
        }
        Datum<Double> efficiency = inner.part().rating().efficiency();
        OptionalDouble in =
                potentials.of(ties.of(part.from())).map(Volts::nominal).orElse(OptionalDouble.empty());
        OptionalDouble out = outputV(part, inner);
        if (!efficiency.isKnown() || in.isEmpty() || in.getAsDouble() <= 0 || out.isEmpty()) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(out.getAsDouble() / in.getAsDouble() / efficiency.or(1.0));
    }

    private OptionalDouble outputV(Part part, Part.Inner inner) {
        Datum<Double> set = inner.part().rating().outputV();
        return set.isKnown() ? OptionalDouble.of(set.or(0.0)) : nominal(part.to(), part.zero());
    }

    /** {@return the average current to a point in A, as far as it is known} */
    public double averageA(int vertex) {
        return average[vertex];
    }

    /** {@return the average input current of a regulator in A, if the load behind it and its efficiency are known} */
    public OptionalDouble inputA(Part regulator) {
        return averageKnown(regulator.to()) ? input(regulator, average) : OptionalDouble.empty();
    }

    /** {@return the input current of a regulator in A when everything behind it peaks, if that is known} */
    public OptionalDouble peakInputA(Part regulator) {
        return peakKnown(regulator.to()) ? input(regulator, peak) : OptionalDouble.empty();
    }

    private OptionalDouble input(Part regulator, double[] amps) {
        double out = amps[regulator.to()];
        OptionalDouble gain = gain(regulator);
        return gain.isPresent() || out == 0 ? OptionalDouble.of(out * gain.orElse(0)) : OptionalDouble.empty();
    }

    /** {@return the current to a point in A when everything behind it peaks at once, as far as it is known} */
    public double peakA(int vertex) {
        return peak[vertex];
    }

    /** Whether all averages behind a point are known. */
    public boolean averageKnown(int vertex) {
        return !averageOpen.get(vertex);
    }

    /** Whether all peaks behind a point are known. */
    public boolean peakKnown(int vertex) {
        return !peakOpen.get(vertex);
    }
}
