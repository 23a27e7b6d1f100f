package ringout.bench;

import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;

/**
 * What was measured at one size. Times in ms, memory in MB.
 *
 * @param wires number of conductors
 * @param megabytes size of the file
 * @param stream every token of the file by the JSON parser alone
 * @param read bytes to model
 * @param graph model to graph and nets
 * @param check all checks
 * @param topology nets, bridges, cut vertices and cycle basis
 * @param library connected components of the same graph by JGraphT
 * @param model memory the model holds
 * @param facts memory the graph and the facts derived from it hold
 * @param peak most heap in use in any of the rounds, garbage included
 * @param said number of findings and open questions; 0 is right
 */
record Row(
        int wires,
        double megabytes,
        double stream,
        double read,
        double graph,
        double check,
        double topology,
        double library,
        double model,
        double facts,
        double peak,
        int said) {
    static final String HEAD =
            "conductors  MB file |  stream    read   graph   check | together/stream | topology library  ratio | model MB graph MB peak MB | said";

    /** The numbers as one line, for another process to read. */
    static String line(int wires, double... numbers) {
        return wires + " "
                + DoubleStream.of(numbers)
                        .mapToObj(number -> String.format(Locale.ROOT, "%.4f", number))
                        .collect(Collectors.joining(" "));
    }

    /** Reads such a line. */
    static Row of(String line) {
        double[] n = DoubleStream.of(java.util.Arrays.stream(line.split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray())
                .toArray();
        return new Row((int) n[0], n[1], n[2], n[3], n[4], n[5], n[6], n[7], n[8], n[9], n[10], (int) n[11]);
    }

    double together() {
        return read + graph + check;
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%10d %8.2f | %7.2f %7.2f %7.2f %7.2f | %15.2f | %8.2f %7.2f %6.3f | %8.1f %8.1f %7.1f | %4d",
                wires,
                megabytes,
                stream,
                read,
                graph,
                check,
                together() / stream,
                topology,
                library,
                topology / library,
                model,
                facts,
                peak,
                said);
    }
}
