package ringout.solve.network;

import java.util.Arrays;
import java.util.BitSet;

/** Resistors in series made one: ways from a point where something stands or ways meet to the next such point. */
final class Chains {
    private static final int NONE = Condensed.NONE;

    private final Contraction points;
    private final CutEnds cut;
    private final double[] ohms;
    private final int[] core;
    private int cores;
    private final int[] anchor;
    private final int[] way;
    private final double[] ahead;
    private final int[] wayOf;
    private final BitSet forward = new BitSet();
    private final IntRow starts = new IntRow();
    private final IntRow ends = new IntRow();
    private final DoubleRow lengths = new DoubleRow();
    private final int[] first;
    private final int[] next;

    Chains(Contraction points, CutEnds cut, BitSet kept, double[] ohms) {
        this.points = points;
        this.cut = cut;
        this.ohms = ohms;
        core = filled(points.count());
        anchor = filled(points.count());
        way = filled(points.count());
        ahead = new double[points.count()];
        wayOf = filled(points.elements());
        first = filled(points.count());
        next = filled(2 * points.elements());
        slots();
        for (int p = 0; p < core.length; p++) {
            boolean alone = cut.root(p) == p && cut.degree(p) == 0;
            if (kept.get(p) || alone || cut.degree(p) > 2) {
                found(p);
            }
        }
        walkAll();
    }

    private static int[] filled(int length) {
        int[] row = new int[length];
        Arrays.fill(row, NONE);
        return row;
    }

    /** Every element that carries stands in two lists, one at each of its points. */
    private void slots() {
        for (int e = points.elements() - 1; e >= 0; e--) {
            if (cut.carries(e)) {
                next[2 * e] = first[points.from(e)];
                first[points.from(e)] = 2 * e;
                next[2 * e + 1] = first[points.to(e)];
                first[points.to(e)] = 2 * e + 1;
            }
        }
    }

    private void found(int point) {
        core[point] = cores++;
        anchor[point] = core[point];
    }

    private void walkAll() {
        for (int p = 0; p < core.length; p++) {
            if (core[p] != NONE) {
                walkFrom(p);
            }
        }
        // What is left are rings nothing stands on: one of their points has to be the first.
        for (int p = 0; p < core.length; p++) {
            if (anchor[p] == NONE && cut.root(p) == p) {
                found(p);
                walkFrom(p);
            }
        }
    }

    private void walkFrom(int point) {
        for (int slot = first[point]; slot != NONE; slot = next[slot]) {
            if (wayOf[slot / 2] == NONE) {
                walk(point, slot);
            }
        }
    }

    private void walk(int start, int firstSlot) {
        int number = starts.size();
        double sum = 0;
        int slot = firstSlot;
        int at = start;
        boolean more = true;
        while (more) {
            int e = slot / 2;
            wayOf[e] = number;
            forward.set(e, points.from(e) == at);
            sum += ohms[e];
            at = points.from(e) == at ? points.to(e) : points.from(e);
            more = core[at] == NONE;
            if (more) {
                anchor[at] = core[start];
                way[at] = number;
                ahead[at] = sum;
                slot = first[at] / 2 == e ? next[first[at]] : first[at];
            }
        }
        starts.add(core[start]);
        ends.add(core[at]);
        lengths.add(sum);
    }

    /** {@return the number of nodes left} */
    int cores() {
        return cores;
    }

    /** {@return the number of ways} */
    int count() {
        return starts.size();
    }

    int start(int number) {
        return starts.get(number);
    }

    int end(int number) {
        return ends.get(number);
    }

    double ohms(int number) {
        return lengths.get(number);
    }

    /** {@return the node left at the start of the way a point lies on} */
    int anchor(int point) {
        return anchor[point];
    }

    /** {@return the way a point lies on, or {@link Condensed#NONE} when it is left itself} */
    int way(int point) {
        return way[point];
    }

    /** {@return the resistance from the start of its way to a point} */
    double ahead(int point) {
        return ahead[point];
    }

    /** {@return the way an element is part of, or {@link Condensed#NONE}} */
    int wayOf(int element) {
        return wayOf[element];
    }

    /** {@return whether an element points along its way} */
    boolean forward(int element) {
        return forward.get(element);
    }
}
