package ringout.graph;

/** The three edges of every conductor: its contact at the from end, itself, its contact at the to end. */
final class WireEdges {
    private static final int EACH = 3;
    private static final int FROM_CONTACT = 0;
    private static final int CONDUCTOR = 1;
    private static final int TO_CONTACT = 2;

    private final int[] edges;

    WireEdges(int wires, EdgeKind[] kinds, int[] refs) {
        edges = new int[EACH * wires];
        boolean[] met = new boolean[wires];
        for (int edge = 0; edge < kinds.length; edge++) {
            int at = EACH * refs[edge];
            if (kinds[edge] == EdgeKind.CONDUCTOR) {
                edges[at + CONDUCTOR] = edge;
            } else if (kinds[edge] == EdgeKind.CONTACT) {
                edges[at + (met[refs[edge]] ? TO_CONTACT : FROM_CONTACT)] = edge;
                met[refs[edge]] = true;
            }
        }
    }

    int conductor(int wire) {
        return edges[EACH * wire + CONDUCTOR];
    }

    int fromContact(int wire) {
        return edges[EACH * wire + FROM_CONTACT];
    }

    int toContact(int wire) {
        return edges[EACH * wire + TO_CONTACT];
    }
}
