package ringout.synthetic;

import java.util.List;

/**
 * What the wires of a lead are.
 *
 * @param kind what it carries, in the words of the list
 * @param lengthMm cut length
 * @param averageA average current, 0 when there is nothing to say
 * @param peakA peak current
 * @param fuseA fuse, 0 for none
 * @param bundle bundle it runs in, or empty
 */
record Cable(String kind, int lengthMm, double averageA, double peakA, double fuseA, String bundle) {
    /** Gauges with the current of one wire in free air (common practice, no source). */
    private static final List<double[]> AMPACITIES = List.of(
            new double[] {28, 1.4},
            new double[] {26, 2.2},
            new double[] {24, 3.5},
            new double[] {22, 7},
            new double[] {20, 11},
            new double[] {18, 16},
            new double[] {16, 22},
            new double[] {14, 32},
            new double[] {12, 41},
            new double[] {10, 55},
            new double[] {8, 73},
            new double[] {6, 101},
            new double[] {4, 135},
            new double[] {2, 181});

    static Cable signal(String kind, int lengthMm) {
        return new Cable(kind, lengthMm, 0, 0, 0, "");
    }

    /** A signal lead that also carries a supply, or a share of a return. */
    static Cable carrying(String kind, int lengthMm, double averageA, double peakA) {
        return new Cable(kind, lengthMm, averageA, peakA, 0, "");
    }

    static Cable power(int lengthMm, double averageA, double peakA) {
        return new Cable("power", lengthMm, averageA, peakA, 0, "");
    }

    Cable fused(double amps) {
        return new Cable(kind, lengthMm, averageA, peakA, amps, bundle);
    }

    Cable as(String other) {
        return new Cable(other, lengthMm, averageA, peakA, fuseA, bundle);
    }

    Cable in(String name) {
        return new Cable(kind, lengthMm, averageA, peakA, fuseA, name);
    }

    /** The thinnest gauge that carries the current with a third to spare and fits the contacts. */
    int awg(Fit fit) {
        double wanted = Math.max(Math.max(averageA * 1.5, fuseA * 1.25), Math.min(peakA, averageA * 3));
        for (double[] gauge : AMPACITIES) {
            if (gauge[1] >= wanted && gauge[0] <= fit.thinnest()) {
                return (int) gauge[0];
            }
        }
        throw new IllegalArgumentException("no wire for " + wanted + " A");
    }
}
