package ringout.solve.network;

import java.util.Random;

/**
 * A made-up power network of any size, from a seed: zones with a fused supply tree, one load in five fed a second time
 * from the next zone, and grounds meshed from zone to zone. Nearly a tree, as harnesses are; not a copy of any aircraft.
 */
public final class SyntheticHarness {

    private static final int NODES_PER_LOAD = 10;
    private static final int LOADS_PER_ZONE = 40;

    private final NetworkBuilder builder;
    private final Random random;
    private final int[] bus;
    private final int[] ground;
    private int nextNode;

    private SyntheticHarness(int nodes, long seed) {
        random = new Random(seed);
        int zones = Math.max(2, nodes / (NODES_PER_LOAD * LOADS_PER_ZONE));
        bus = new int[zones];
        ground = new int[zones];
        builder = ResistiveNetwork.builder(nodes);
    }

    /** A network of exactly the given number of nodes (at least 100) with node 0 as its reference. */
    public static ResistiveNetwork of(int nodes, long seed) {
        SyntheticHarness harness = new SyntheticHarness(nodes, seed);
        harness.backbone();
        for (int load = 0; harness.nextNode + NODES_PER_LOAD <= nodes; load++) {
            harness.load(load % harness.bus.length);
        }
        while (harness.nextNode < nodes) {
            harness.wire(harness.bus[0], harness.node());
        }
        return harness.builder.reference(0).build();
    }

    private void backbone() {
        int minus = node();
        int plus = node();
        builder.source(minus, plus, 28, 0.012);
        for (int z = 0; z < bus.length; z++) {
            bus[z] = node();
            int fuse = node();
            builder.resistor(z < 4 ? plus : bus[(z - 1) / 3], fuse, 0.002);
            wire(fuse, bus[z]);
            ground[z] = node();
            wire(ground[z], z < 4 ? minus : ground[(z - 1) / 3]);
            if (z > 0) {
                wire(ground[z], ground[z - 1]);
            }
        }
    }

    private void load(int zone) {
        int pin = chain(bus[zone], 4);
        int back = chain(ground[zone], 4);
        builder.resistor(pin, back, 20 + 400 * random.nextDouble());
        int other = (zone + 1) % bus.length;
        if (random.nextInt(5) == 0 && other != zone) {
            wire(chain(bus[other], 2), pin);
        } else {
            wire(chain(pin, 1), node());
        }
    }

    private int chain(int from, int length) {
        int at = from;
        for (int i = 0; i < length; i++) {
            int next = node();
            if (i % 2 == 0) {
                builder.resistor(at, next, 0.003 + 0.002 * random.nextDouble());
            } else {
                wire(at, next);
            }
            at = next;
        }
        return at;
    }

    private void wire(int a, int b) {
        builder.resistor(a, b, 0.01 + 0.1 * random.nextDouble());
    }

    private int node() {
        return nextNode++;
    }
}
