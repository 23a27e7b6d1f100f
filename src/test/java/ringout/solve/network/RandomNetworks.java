package ringout.solve.network;

import java.util.Random;

/** Random networks with everything a harness has: contracted, open, parallel and looped elements, islands, sources. */
final class RandomNetworks {

    private RandomNetworks() {}

    /** A network of 2 to 24 nodes in which anything may happen. */
    static ResistiveNetwork any(long seed) {
        Random random = new Random(seed);
        int n = 2 + random.nextInt(23);
        NetworkBuilder b = ResistiveNetwork.builder(n);
        int elements = random.nextInt(2 * n + 1);
        for (int e = 0; e < elements; e++) {
            int a = random.nextInt(n);
            int c = random.nextInt(n);
            switch (random.nextInt(8)) {
                case 0 -> b.resistor(a, c, 0);
                case 1 -> b.resistor(a, c, Double.POSITIVE_INFINITY);
                case 2 -> b.source(a, c, 50 * random.nextDouble(), ohms(random));
                default -> b.resistor(a, c, ohms(random));
            }
        }
        for (int i = random.nextInt(4); i > 0; i--) {
            b.inject(random.nextInt(n), random.nextInt(n), 10 * random.nextDouble());
        }
        for (int i = random.nextInt(3); i > 0; i--) {
            b.reference(random.nextInt(n));
        }
        return b.build();
    }

    /** Three decades: enough to matter, few enough for a dense solver in double precision to serve as judge. */
    static double ohms(Random random) {
        return Math.pow(10, 3 * random.nextDouble() - 2);
    }
}
