package ringout.read.fuzz;

import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Seeded junk and damaged samples: the reader answers each, whatever it is. The long search runs in the fuzz profile. */
class HostileInputTest {
    private static final List<String> TABLES = List.of("leads.csv", "units.csv", "pins.csv", "parts.csv", "loads.csv");
    private static final Duration LONG = Duration.ofSeconds(60);

    @Test
    void randomBytes() {
        assertTimeoutPreemptively(LONG, () -> {
            Random random = new Random(11);
            for (int i = 0; i < 600; i++) {
                byte[] bytes = new byte[random.nextInt(400)];
                random.nextBytes(bytes);
                AnyInput.json(bytes);
                AnyInput.table(TABLES.get(i % TABLES.size()), bytes);
                AnyInput.edits(new String(bytes, StandardCharsets.ISO_8859_1));
            }
        });
    }

    @Test
    void damagedSamples() {
        assertTimeoutPreemptively(LONG, () -> {
            Random random = new Random(12);
            List<Path> files = samples();
            for (int i = 0; i < 600; i++) {
                Path file = files.get(random.nextInt(files.size()));
                byte[] bytes = damage(Files.readAllBytes(file), random);
                if (file.toString().endsWith(".json")) {
                    AnyInput.json(bytes);
                } else {
                    AnyInput.table(file.getFileName().toString(), bytes);
                }
            }
        });
    }

    private static List<Path> samples() throws java.io.IOException {
        try (Stream<Path> files = Files.walk(Path.of("samples"))) {
            return files.filter(f -> f.toString().matches(".*\\.(csv|json)"))
                    .sorted()
                    .toList();
        }
    }

    private static byte[] damage(byte[] good, Random random) {
        List<Byte> bytes = new ArrayList<>();
        int start = random.nextInt(Math.max(1, good.length - 1500));
        int end = random.nextBoolean() ? good.length : Math.min(good.length, start + 1500);
        for (int i = random.nextBoolean() ? 0 : start; i < end; i++) {
            bytes.add(good[i]);
        }
        String odd = "\"'{}[],;:\\\u0000\n\t#?=>.-(9";
        for (int i = random.nextInt(12); i > 0 && !bytes.isEmpty(); i--) {
            int at = random.nextInt(bytes.size());
            switch (random.nextInt(3)) {
                case 0 -> bytes.remove(at);
                case 1 -> bytes.set(at, (byte) random.nextInt(256));
                default -> bytes.add(at, (byte) odd.charAt(random.nextInt(odd.length())));
            }
        }
        byte[] damaged = new byte[bytes.size()];
        for (int i = 0; i < damaged.length; i++) {
            damaged[i] = bytes.get(i);
        }
        return damaged;
    }

    /** Lengths and depths at which a careless pattern or recursion would stand still or fall over. */
    @Test
    void longAndDeepInput() {
        assertTimeoutPreemptively(LONG, () -> {
            AnyInput.json("[".repeat(200_000).getBytes(StandardCharsets.UTF_8));
            AnyInput.json("{\"units\":[".repeat(50_000).getBytes(StandardCharsets.UTF_8));
            AnyInput.json(("{\"leads\":[{\"id\":\"W\",\"lengthMm\":" + "9".repeat(900) + "}]}")
                    .getBytes(StandardCharsets.UTF_8));
            for (String piece :
                    List.of(" ", "9", "a", "=", "\"", "\"\"", "..", "1..", ">", "->", ";", "(", ",1", "#", "W1..6")) {
                String cell = piece.repeat(200_000 / piece.length());
                for (String head :
                        List.of("id,from,to,lengthMm", "id,from,to,pins", "id,from,to,awg", "id,from,to,twisted")) {
                    AnyInput.table(
                            "leads.csv", (head + "\nW1,A-1,B-1,x" + cell + "y\n").getBytes(StandardCharsets.UTF_8));
                }
                AnyInput.table("leads.csv", ("id,from,to\n" + cell).getBytes(StandardCharsets.UTF_8));
                AnyInput.table(
                        "units.csv", ("ref,type,address\nA,B,x" + cell + "y\n").getBytes(StandardCharsets.UTF_8));
                AnyInput.json(("{\"leads\":[{\"id\":\"W\",\"pins\":" + quoted(cell) + "}]}")
                        .getBytes(StandardCharsets.UTF_8));
                AnyInput.edits("set leads[" + cell + "].lengthMm " + cell);
            }
        });
    }

    private static String quoted(String text) {
        return '"' + text.replace("\"", "\\\"") + '"';
    }
}
