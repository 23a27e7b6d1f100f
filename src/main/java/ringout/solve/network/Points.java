package ringout.solve.network;

import java.util.Arrays;
import ringout.graph.index.UnionFind;

/**
 * The points of a network (nodes joined by 0 Ω), the connected pieces they form, and the datum of each piece: the point
 * of its first reference or, without one, the point with most elements, because a hub taken out as datum leaves the
 * sparsest rest.
 */
final class Points {

    private final ResistiveNetwork network;
    private final int[] point;
    private final int[] piece;
    private final int[] datum;
    private int count;

    private Points(ResistiveNetwork network) {
        this.network = network;
        point = number(NetworkStructure.join(network, e -> network.ohms(e) == 0));
        for (int p : point) {
            count = Math.max(count, p + 1);
        }
        int[] pieceOfNode = number(NetworkStructure.join(network, e -> true));
        piece = new int[count];
        int pieces = 0;
        for (int v = 0; v < point.length; v++) {
            piece[point[v]] = pieceOfNode[v];
            pieces = Math.max(pieces, pieceOfNode[v] + 1);
        }
        datum = new int[pieces];
        chooseDatums();
    }

    static Points of(ResistiveNetwork network) {
        return new Points(network);
    }

    /** Numbers sets in the order of their first member. */
    private static int[] number(UnionFind sets) {
        int n = sets.elementCount();
        int[] numberOf = new int[n];
        int[] result = new int[n];
        Arrays.fill(numberOf, -1);
        int next = 0;
        for (int v = 0; v < n; v++) {
            int root = sets.find(v);
            if (numberOf[root] < 0) {
                numberOf[root] = next++;
            }
            result[v] = numberOf[root];
        }
        return result;
    }

    private void chooseDatums() {
        Arrays.fill(datum, -1);
        for (int r = 0; r < network.references(); r++) {
            int p = point[network.reference(r)];
            if (datum[piece[p]] < 0) {
                datum[piece[p]] = p;
            }
        }
        boolean[] named = new boolean[datum.length];
        for (int i = 0; i < datum.length; i++) {
            named[i] = datum[i] >= 0;
        }
        int[] elements = elementsAtPoints();
        for (int p = 0; p < count; p++) {
            int i = piece[p];
            if (!named[i] && (datum[i] < 0 || elements[p] > elements[datum[i]])) {
                datum[i] = p;
            }
        }
    }

    private int[] elementsAtPoints() {
        int[] elements = new int[count];
        for (int e = 0; e < network.elements(); e++) {
            elements[point[network.from(e)]]++;
            elements[point[network.to(e)]]++;
        }
        return elements;
    }

    /** {@return the point of each node} */
    int[] point() {
        return point;
    }

    /** {@return the piece of each point} */
    int[] piece() {
        return piece;
    }

    /** {@return the number of points that are not a datum} */
    int unknownCount() {
        return count - datum.length;
    }

    /** {@return a number for each point that is not a datum, -1 for a datum} */
    int[] unknowns() {
        int[] unknown = new int[count];
        for (int d : datum) {
            unknown[d] = -1;
        }
        int next = 0;
        for (int p = 0; p < count; p++) {
            unknown[p] = unknown[p] < 0 ? -1 : next++;
        }
        return unknown;
    }
}
