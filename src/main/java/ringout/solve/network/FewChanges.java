package ringout.solve.network;

import java.util.Arrays;

/**
 * The factor of a network of which most values are those of a network factorised before: the columns that lie on the way
 * from a changed element to the root are computed anew, the others are taken over.
 */
final class FewChanges {

    /** With more changed elements than one in so many, it costs no less to factorise from the start. */
    private static final int WORTH_IT = 16;

    private final NetworkStructure structure;
    private final ResistiveNetwork values;
    private final Factor factor;
    private final Places places;

    private FewChanges(FactorisedNetwork base, ResistiveNetwork values) {
        structure = base.structure();
        this.values = values;
        factor = base.factor().copy();
        places = structure.places();
    }

    /** {@return the elements whose resistance differs, ascending} */
    static IntRow changed(ResistiveNetwork before, ResistiveNetwork after) {
        IntRow changed = new IntRow();
        for (int e = 0; e < after.elements(); e++) {
            if (before.siemens(e) != after.siemens(e)) {
                changed.add(e);
            }
        }
        return changed;
    }

    /** {@return whether so few of the elements changed that it saves time to take over the rest} */
    static boolean worthIt(IntRow changed, ResistiveNetwork values) {
        return changed.size() <= values.elements() / WORTH_IT;
    }

    /** {@return the factor of other values, of which only the given elements differ from those of the base} */
    static Factor of(FactorisedNetwork base, ResistiveNetwork values, IntRow changed) {
        return new FewChanges(base, values).refactorise(changed);
    }

    private Factor refactorise(IntRow changed) {
        double[] scratch = new double[factor.shape.size];
        for (int j : ways(changed)) {
            for (int p = factor.shape.columnStart[j]; p < factor.shape.columnStart[j + 1]; p++) {
                factor.share[p] = siemens(p);
            }
            factor.shunt[j] = siemens(factor.shape.entries() + j);
            factor.eliminate(j, scratch);
        }
        return factor;
    }

    private double siemens(int place) {
        double sum = 0;
        for (int i = places.first(place); i < places.end(place); i++) {
            sum += values.siemens(places.member(i));
        }
        return sum;
    }

    private int[] ways(IntRow changed) {
        boolean[] marked = new boolean[factor.shape.size];
        int[] way = new int[factor.shape.size];
        int length = 0;
        for (int c = 0; c < changed.size(); c++) {
            for (int k = first(changed.get(c)); k >= 0 && !marked[k]; k = factor.shape.tree.parent[k]) {
                marked[k] = true;
                way[length++] = k;
            }
        }
        int[] ascending = Arrays.copyOf(way, length);
        Arrays.sort(ascending);
        return ascending;
    }

    /** The position an element's conductance is first read at, or -1 for one between equal points. */
    private int first(int element) {
        if (!structure.carries(element)) {
            return -1;
        }
        int a = structure.position(values.from(element));
        int b = structure.position(values.to(element));
        return a == NetworkStructure.AT_DATUM || b == NetworkStructure.AT_DATUM ? Math.max(a, b) : Math.min(a, b);
    }
}
