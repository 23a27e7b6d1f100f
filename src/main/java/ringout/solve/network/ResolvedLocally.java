package ringout.solve.network;

import java.util.Arrays;

/** The answer as a sparse difference to the solution before. Immutable. */
final class ResolvedLocally implements Resolved {

    private final NetworkSolution before;
    private final Edits edits;
    private final Method method;
    private final int[] position;
    private final double[] change;
    private final int[] cutRoot;

    /** Takes the differences from one or two spreads; cuts come from the first. */
    ResolvedLocally(NetworkSolution before, Edits edits, Method method, Spread first, Spread second) {
        this.before = before;
        this.edits = edits;
        this.method = method;
        position =
                IntRow.union(first.touched().toSortedArray(), second.touched().toSortedArray());
        change = new double[position.length];
        cutRoot = new int[position.length];
        for (int i = 0; i < position.length; i++) {
            change[i] = first.change(position[i]) + second.change(position[i]);
            cutRoot[i] = first.cutRoot(position[i]);
        }
    }

    @Override
    public NodeVoltage voltage(int node) {
        ResistiveNetwork network = before.factorised().network();
        for (int r = 0; r < network.references(); r++) {
            NodeVoltage volts = between(node, network.reference(r));
            if (volts instanceof NodeVoltage.Volts) {
                return volts;
            }
        }
        return new NodeVoltage.Floating();
    }

    @Override
    public NodeVoltage between(int a, int b) {
        boolean together = before.factorised().connected(a, b) && cutRoot(a) == cutRoot(b);
        return together ? new NodeVoltage.Volts(potential(a) - potential(b)) : new NodeVoltage.Floating();
    }

    private double potential(int node) {
        int i = find(node);
        return before.potential(node) + (i < 0 ? 0 : change[i]);
    }

    private int cutRoot(int node) {
        int i = find(node);
        return i < 0 ? Spread.NOT_CUT : cutRoot[i];
    }

    private int find(int node) {
        int p = before.factorised().structure().position(node);
        return p == NetworkStructure.AT_DATUM ? -1 : Arrays.binarySearch(position, p);
    }

    @Override
    public boolean flows(int injection) {
        ResistiveNetwork excitation = before.excitation();
        return connected(excitation.injectionFrom(injection), excitation.injectionTo(injection));
    }

    @Override
    public double amps(int element) {
        ResistiveNetwork network = before.factorised().network();
        return Resolved.amps(
                between(network.from(element), network.to(element)),
                before.excitation().emf(element),
                edits.ohms(element));
    }

    @Override
    public Method method() {
        return method;
    }

    @Override
    public int touched() {
        return position.length;
    }
}
