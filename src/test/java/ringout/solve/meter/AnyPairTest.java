package ringout.solve.meter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;

/** Whatever two points are named: an answer, the same from both sides, with the expected reading inside its band. */
class AnyPairTest {
    private static final int PAIRS = 60;

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "linewarden-review", "dewmaker", "starter"})
    void ohms(String sample) {
        Random random = new Random(sample.hashCode());
        for (Circuit circuit : Circuit.all(Wiring.of(SmallAircraft.sample(sample)))) {
            for (int n = 0; n < PAIRS; n++) {
                int a = random.nextInt(circuit.wiring().graph().vertexCount());
                int b = near(circuit, a, random);
                OhmsAnswer answer = OhmsQuestion.ask(circuit, a, b, List.of());
                Reading back = MeterNetwork.of(circuit).reading(b, a);
                assertEquals(answer.reading().connected(), back.connected());
                if (answer.reading() instanceof Reading.Ohms there) {
                    assertEquals(
                            there.ohm(),
                            assertInstanceOf(Reading.Ohms.class, back).ohm(),
                            1e-9 * (1 + there.ohm()));
                    assertTrue(there.least() <= there.ohm() && there.ohm() <= there.most(), answer.toString());
                    double told =
                            answer.routes().stream().mapToDouble(Route::share).sum() + answer.rest();
                    assertEquals(a == b ? 0 : 1, told, 1e-6, answer.from() + " " + answer.to());
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "linewarden-review", "dewmaker", "starter"})
    void volts(String sample) {
        Random random = new Random(sample.hashCode());
        Circuit circuit = Circuit.all(Wiring.of(SmallAircraft.sample(sample))).get(0);
        for (int n = 0; n < PAIRS / 6; n++) {
            int a = random.nextInt(circuit.wiring().pinCount());
            int b = random.nextInt(circuit.wiring().pinCount());
            VoltsAnswer there = VoltsQuestion.ask(circuit, a, b, Optional.empty());
            VoltsAnswer back = VoltsQuestion.ask(circuit, b, a, Optional.empty());
            if (there.reading() instanceof Reading.Volts volts) {
                assertEquals(-volts.volts(), ((Reading.Volts) back.reading()).volts(), 1e-9);
                assertEquals(-volts.least(), ((Reading.Volts) back.reading()).most(), 1e-9);
                assertTrue(volts.least() <= volts.volts() && volts.volts() <= volts.most(), there.toString());
            } else {
                assertEquals(there.reading(), back.reading());
            }
        }
    }

    /** Figures no aircraft has, a lead from a pin to itself, two leads on one pin: an answer all the same, never below zero. */
    @Test
    void nonsenseInTheListIsNoDefect() {
        String type =
                "{\"name\": \"N\", \"plugs\": [{\"name\": \"C\", \"contactMilliohm\": -40, \"pins\": [{\"number\": \"1\","
                        + " \"role\": \"can H\", \"inside\": \"B\"}, {\"number\": \"2\", \"role\": \"can L\", \"inside\": \"B\"}]}],"
                        + " \"ports\": [{\"name\": \"B\", \"terminator\": \"fixed\", \"terminatorOhm\": -120, \"nodeOhm\": 0}]}";
        String json = "{\"name\": \"x\", \"types\": [" + type + "], \"units\": [{\"ref\": \"A\", \"type\": \"N\"},"
                + " {\"ref\": \"B\", \"type\": \"N\"}], \"leads\": [{\"id\": \"W1\", \"from\": \"A-C\", \"to\": \"B-C\","
                + " \"areaMm2\": 0.1, \"lengthMm\": -500}, {\"id\": \"W2\", \"from\": \"A-C-1\", \"to\": \"A-C-1\"},"
                + " {\"id\": \"W3\", \"from\": \"A-C-1\", \"to\": \"B-C-2\", \"areaMm2\": 0, \"lengthMm\": 0}]}";
        var read = AircraftReader.read(MemoryFolder.named("x").with("aircraft.json", json));
        Circuit circuit = MeterTests.circuit(read.aircraft());
        int vertices = circuit.wiring().graph().vertexCount();
        for (int a = 0; a < vertices; a++) {
            for (int b = 0; b < vertices; b++) {
                OhmsAnswer answer = OhmsQuestion.ask(circuit, a, b, List.of());
                assertTrue(!(answer.reading() instanceof Reading.Ohms at) || at.ohm() >= 0, answer.toString());
                VoltsAnswer volts = VoltsQuestion.ask(circuit, a, b, Optional.empty());
                assertEquals(new Reading.Floating(), volts.reading());
            }
        }
        BusQuestion.named(circuit, "bus of A, B").forEach(segment -> {
            BusTable table = BusQuestion.ask(circuit, segment);
            table.rows()
                    .forEach(row ->
                            assertEquals(table.spots().size(), row.readings().size()));
        });
    }

    /** Half of the time a vertex of the same net, so that there is something to read. */
    private static int near(Circuit circuit, int a, Random random) {
        int net = circuit.nets().of(a);
        return random.nextBoolean()
                ? random.nextInt(circuit.wiring().graph().vertexCount())
                : circuit.nets().member(net, random.nextInt(circuit.nets().size(net)));
    }
}
