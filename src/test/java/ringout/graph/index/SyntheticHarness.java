package ringout.graph.index;

import java.util.BitSet;
import java.util.Random;

/**
 * A reproducible network with the proportions of a large harness, for measuring only: zones of about 400 wires, a fused
 * supply tree with 20 % second feeds, a meshed ground; 40 % of the wires carry power, 50 % signals in chains, 10 % are
 * paired buses in daisy chain. It is nearly a tree; real harnesses may have larger cores.
 *
 * <p>About 2.8 points and 3.2 connections a wire. Wires and mated contacts conduct; fuses, loads, drivers and receivers
 * are parts and do not.
 */
final class SyntheticHarness {
    private static final int ZONE_WIRES = 400;
    private static final int WIRES_PER_LOAD = 4;
    private static final int PAIRS_PER_BUS = 9;

    private final Random random;
    private final IndexGraphBuilder builder = new IndexGraphBuilder(0);
    private final BitSet conducting = new BitSet();
    private int wires;

    private SyntheticHarness(int wireCount, long seed) {
        random = new Random(seed);
        int zones = Math.max(1, wireCount / ZONE_WIRES);
        int[] supply = new int[zones];
        int[] ground = new int[zones];
        for (int z = 0; z < zones; z++) {
            supply[z] = builder.addVertex();
            ground[z] = builder.addVertex();
            if (z > 0) {
                feed(supply[random.nextInt(z)], supply[z]);
                wire(ground[random.nextInt(z)], ground[z]);
            }
            if (z > 1 && random.nextInt(5) == 0) {
                feed(supply[random.nextInt(z)], supply[z]);
                wire(ground[random.nextInt(z)], ground[z]);
            }
            fill(supply[z], ground[z], (int) ((long) wireCount * (z + 1) / zones));
        }
    }

    static SyntheticHarness of(int wireCount, long seed) {
        return new SyntheticHarness(wireCount, seed);
    }

    /** Everything, parts included, in the order a careful list would name it. */
    IndexGraph all() {
        return builder.undirected();
    }

    /** Everything with points and connections renumbered at random, as a list in no order at all would have it. */
    IndexGraph shuffled() {
        IndexGraph tidy = all();
        int[] vertex = permutation(tidy.vertexCount());
        int[] edge = permutation(tidy.edgeBound());
        int[] from = new int[edge.length];
        int[] to = new int[edge.length];
        BitSet conducts = (BitSet) conducting.clone();
        conducting.clear();
        for (int e = 0; e < edge.length; e++) {
            from[edge[e]] = vertex[tidy.from(e)];
            to[edge[e]] = vertex[tidy.to(e)];
            conducting.set(edge[e], conducts.get(e));
        }
        return IndexGraph.undirected(tidy.vertexCount(), from, to);
    }

    boolean conducts(int edge) {
        return conducting.get(edge);
    }

    int wires() {
        return wires;
    }

    private void fill(int supply, int ground, int wireTarget) {
        int budget = Math.max(0, wireTarget - wires);
        int powerEnd = wires + budget * 4 / 10;
        int signalEnd = powerEnd + budget / 2;
        while (wires + WIRES_PER_LOAD <= powerEnd) {
            load(supply, ground);
        }
        while (wires < signalEnd) {
            signalChain(ground, 1 + random.nextInt(7));
        }
        while (wires + 2 * PAIRS_PER_BUS <= wireTarget) {
            bus(PAIRS_PER_BUS);
        }
    }

    /** A load behind a fuse, supply and return each with a production break on the way. */
    private void load(int supply, int ground) {
        int fused = part(supply);
        int plus = wire(wire(fused));
        int minus = wire(wire(ground));
        builder.addEdge(plus, minus);
    }

    private void signalChain(int ground, int length) {
        int at = part(ground);
        for (int i = 0; i < length; i++) {
            at = halfWire(at);
            if (random.nextInt(4) > 0) {
                builder.addEdge(at, ground);
            }
        }
    }

    private void bus(int pairs) {
        int high = builder.addVertex();
        int low = builder.addVertex();
        builder.addEdge(high, low);
        for (int i = 0; i < pairs; i++) {
            high = halfWire(high);
            low = halfWire(low);
        }
        builder.addEdge(high, low);
    }

    private void feed(int from, int to) {
        wire(part(from), to);
    }

    /** A part from the given point to a new one. */
    private int part(int from) {
        int to = builder.addVertex();
        builder.addEdge(from, to);
        return to;
    }

    /** A wire from the given point to a new one, with a mated contact at each end. */
    private int wire(int from) {
        int to = builder.addVertex();
        wire(from, to);
        return to;
    }

    private void wire(int from, int to) {
        conduct(halfWire(from), to);
    }

    /** A contact, then a wire; the far contact is left to whatever follows. */
    private int halfWire(int from) {
        int a = builder.addVertex();
        int b = builder.addVertex();
        conduct(from, a);
        conduct(a, b);
        wires++;
        return b;
    }

    private void conduct(int a, int b) {
        conducting.set(builder.addEdge(a, b));
    }

    private int[] permutation(int count) {
        int[] p = new int[count];
        for (int i = 0; i < count; i++) {
            int j = random.nextInt(i + 1);
            p[i] = p[j];
            p[j] = i;
        }
        return p;
    }
}
