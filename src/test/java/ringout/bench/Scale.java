package ringout.bench;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Time and memory of read, graph and checks over synthetic aircraft of growing size, each size in a process of its own,
 * beside two references measured in the same process: every token of the same bytes by the JSON parser alone, and the
 * connected components of the same graph by JGraphT.
 *
 * <p>Arguments: {@code cpu} to count processor time of the working thread instead of time on the wall (on a busy machine),
 * {@code seconds=N} for each half of a measurement, and the sizes in conductors.
 */
public final class Scale {
    private static final int[] SIZES = {100, 1_000, 10_000, 100_000, 1_000_000};
    private static final int LARGE = 100_000;

    private Scale() {}

    /** Measures; see the class. */
    public static void main(String[] arguments) throws Exception {
        boolean processor = Arrays.asList(arguments).contains("cpu");
        long seconds = Arrays.stream(arguments)
                .filter(a -> a.startsWith("seconds="))
                .mapToLong(a -> Long.parseLong(a.substring("seconds=".length())))
                .findFirst()
                .orElse(5);
        int[] sizes = Arrays.stream(arguments)
                .filter(a -> Character.isDigit(a.charAt(0)))
                .mapToInt(Integer::parseInt)
                .toArray();
        if (Arrays.asList(arguments).contains("one")) {
            print(OneSize.measure(sizes[0], processor, seconds));
            return;
        }
        print(Row.HEAD);
        List<Row> rows = new ArrayList<>();
        for (int size : sizes.length == 0 ? SIZES : sizes) {
            Row row = Row.of(inOwnProcess(size, processor, seconds));
            rows.add(row);
            print(row.toString());
        }
        print("times in ms, medians of warm rounds" + (processor ? ", processor time of the working thread" : "")
                + "; heap limit " + heap(LARGE) + " up to " + LARGE + " conductors");
        exponent(rows);
    }

    private static void exponent(List<Row> rows) {
        List<Row> counted = rows.stream().filter(row -> row.wires() >= 900).toList();
        if (counted.size() > 1) {
            Row first = counted.get(0);
            Row last = counted.get(counted.size() - 1);
            double growth =
                    Math.log(last.together() / first.together()) / Math.log((double) last.wires() / first.wires());
            print(String.format(
                    Locale.ROOT,
                    "growth exponent of read, graph and check together, %d to %d conductors: %.3f",
                    first.wires(),
                    last.wires(),
                    growth));
        }
    }

    private static String heap(int size) {
        return size <= LARGE ? "-Xmx2g" : "-Xmx12g";
    }

    private static String inOwnProcess(int size, boolean processor, long seconds)
            throws IOException, InterruptedException {
        List<String> call = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                heap(size),
                "-Dcurrents=" + Boolean.getBoolean("currents"),
                "-cp",
                System.getProperty("java.class.path"),
                Scale.class.getName(),
                "one",
                "seconds=" + seconds,
                Integer.toString(size)));
        if (processor) {
            call.add("cpu");
        }
        Process process = new ProcessBuilder(call)
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader lines =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            String line = lines.readLine();
            if (process.waitFor() != 0 || line == null) {
                throw new IOException("no result for " + size + " conductors");
            }
            return line;
        }
    }

    @SuppressWarnings("SystemOut") // a command of its own
    private static void print(String line) {
        System.out.println(line);
    }
}
