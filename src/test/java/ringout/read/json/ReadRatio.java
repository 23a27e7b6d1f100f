package ringout.read.json;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.json.JsonFactory;

/**
 * How long reading an aircraft takes beside streaming the same bytes through the JSON parser alone. Run the main method;
 * the argument is the number of conductors (100000). Nothing is asserted: times belong to the machine.
 */
final class ReadRatio {
    private static final int ROUNDS = 300;

    private ReadRatio() {}

    public static void main(String[] args) {
        int conductors = args.length > 0 ? Integer.parseInt(args[0]) : 100_000;
        measure("a row a lead", conductors, json(conductors, 4));
        measure("a row a wire", conductors, json(conductors, 1));
    }

    private static void measure(String form, int conductors, String json) {
        byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
        MemoryFolder folder = MemoryFolder.named("ratio").with("aircraft.json", bytes);
        double parse = Double.MAX_VALUE;
        double read = Double.MAX_VALUE;
        for (int i = 0; i < ROUNDS; i++) {
            long start = System.nanoTime();
            stream(bytes);
            long middle = System.nanoTime();
            if (!AircraftReader.read(folder).ok()) {
                throw new IllegalStateException("the sample does not read");
            }
            long end = System.nanoTime();
            parse = Math.min(parse, (middle - start) / 1e6);
            read = Math.min(read, (end - middle) / 1e6);
        }
        System.out.printf(
                Locale.ROOT,
                "%s, %d conductors, %.1f MB: parser alone %.1f ms, read %.1f ms, ratio %.2f%n",
                form,
                conductors,
                bytes.length / 1e6,
                parse,
                read,
                read / parse);
    }

    private static void stream(byte[] bytes) {
        try (JsonParser parser = new JsonFactory().createParser(ObjectReadContext.empty(), bytes)) {
            while (parser.nextToken() != null) {
                // only the tokens
            }
        }
    }

    /** Leads of some conductors, or one row a conductor, and a unit for each twenty conductors. */
    private static String json(int conductors, int each) {
        StringBuilder text = new StringBuilder("{\"name\": \"ratio\",\n\"units\": [\n");
        int leads = conductors / each;
        for (int i = 0; i < conductors / 20; i++) {
            text.append(i == 0 ? "" : ",\n")
                    .append(String.format(
                            Locale.ROOT,
                            "{\"ref\": \"U%d\", \"type\": \"BOX\", \"zone\": \"bay %d\", \"xMm\": %d, \"yMm\": %d.5, \"zMm\": 30,"
                                    + " \"ports\": [{\"port\": \"CAN1\", \"address\": %d, \"terminator\": \"off\"}]}",
                            i,
                            i % 40,
                            i % 700,
                            i % 300,
                            i % 120 + 1));
        }
        text.append("],\n\"leads\": [\n");
        for (int i = 0; i < leads; i++) {
            text.append(i == 0 ? "" : ",\n")
                    .append(String.format(
                            Locale.ROOT,
                            "{\"id\": \"W%d\", \"from\": \"U%d-C%d\", \"to\": \"U%d-C%d\", \"kind\": \"%s\", \"awg\": %d, \"lengthMm\": %d,"
                                    + " %s\"twisted\": true, \"note\": \"row %d\"}",
                            i,
                            i * each / 20,
                            i % 10,
                            (i * each / 20 + 1) % Math.max(1, conductors / 20),
                            i % 7,
                            i % 3 == 0 ? "can" : "serial",
                            22 + i % 3 * 2,
                            100 + i % 900,
                            each == 1 ? "" : "\"pins\": \"1>1 2>3 3>2 4>4\", ",
                            i));
        }
        return text.append("]}\n").toString();
    }
}
