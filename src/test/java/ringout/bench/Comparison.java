package ringout.bench;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import ringout.compare.find.Differences;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.shape.Shape;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;
import ringout.synthetic.SyntheticAircraft;

/**
 * Time to compare two aircraft against the time to read both files. Run the main method with the number of conductors and of
 * rounds; goal: at most 1.5 times. The other aircraft is the base with its rows turned round and some leads longer or gone.
 */
public final class Comparison {
    private static final String FILE = "aircraft.json";
    private static final int EVERY = 1000;

    private Comparison() {}

    /** Measures and prints. */
    public static void main(String[] args) throws IOException {
        int conductors = args.length > 0 ? Integer.parseInt(args[0]) : 100_000;
        int rounds = args.length > 1 ? Integer.parseInt(args[1]) : 7;
        ByteArrayOutputStream out = new ByteArrayOutputStream(conductors * 256);
        int made = SyntheticAircraft.write(1, conductors, out).conductors();
        MemoryFolder folder = MemoryFolder.named("bench").with(FILE, out.toByteArray());
        double[] read = new double[rounds];
        double[] graph = new double[rounds];
        double[] compare = new double[rounds];
        int found = 0;
        for (int round = 0; round < rounds; round++) {
            long start = System.nanoTime();
            Aircraft base = AircraftReader.read(folder, FILE).aircraft();
            Aircraft second = AircraftReader.read(folder, FILE).aircraft();
            read[round] = since(start);
            Aircraft other = changed(second);
            start = System.nanoTime();
            Circuit here = Circuit.all(Wiring.of(base)).get(0);
            Circuit there = Circuit.all(Wiring.of(other)).get(0);
            graph[round] = since(start);
            start = System.nanoTime();
            found = Differences.of(here, there).all().size();
            compare[round] = since(start);
        }
        System.out.printf(
                Locale.ROOT,
                "%d conductors, %d differences: read both %.0f ms, graphs of both %.0f ms, compare %.0f ms; compare / read"
                        + " %.2f, with the graphs %.2f%n",
                made,
                found,
                median(read),
                median(graph),
                median(compare),
                median(compare) / median(read),
                (median(compare) + median(graph)) / median(read));
    }

    private static Aircraft changed(Aircraft aircraft) {
        Shape<Lead> shape = Shape.of(Lead.class);
        List<Lead> leads = new ArrayList<>();
        for (int i = aircraft.leads().size() - 1; i >= 0; i--) {
            Lead lead = aircraft.leads().get(i);
            if (i % EVERY == 1) {
                leads.add(shape.with(lead, "lengthMm", Datum.of(4321.0)));
            } else if (i % EVERY != 2) {
                leads.add(lead);
            }
        }
        return Shape.of(Aircraft.class).with(aircraft, "leads", List.copyOf(leads));
    }

    private static double since(long start) {
        return (System.nanoTime() - start) / 1e6;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
