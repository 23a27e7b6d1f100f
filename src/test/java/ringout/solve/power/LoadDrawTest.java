package ringout.solve.power;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.model.Event;

/** What a load draws in which case, and what is said when a figure is missing. */
class LoadDrawTest {
    private static final String ALL = "{\"rail\": \"r\", \"idleA\": 0.5, \"averageA\": 2, \"peakA\": 6, \"peakS\": 1}";
    private static final String EVENTS = """
            , "events": [{"name": "amps", "loads": [{"unit": "L1..3", "amps": 9}, {"unit": "L", "rail": "r", "amps": 3}]},
              {"name": "watts", "loads": [{"unit": "L", "watts": 10}]},
              {"name": "peak", "loads": [{"unit": "L", "peak": true}]},
              {"name": "elsewhere", "loads": [{"unit": "L", "rail": "other", "amps": 3}, {"unit": "M", "amps": 3}]}]
            """;

    private static double amps(String load, LoadCase of) {
        return Flows.load(Flows.flow(Bench.loop(load, EVENTS), of), "L").amps();
    }

    private static LoadCase during(LoadCase of, String name) {
        Circuit circuit = Bench.loop(ALL, EVENTS);
        Event event = circuit.wiring().aircraft().events().stream()
                .filter(e -> e.name().equals(name))
                .findFirst()
                .orElseThrow();
        return of.during(event);
    }

    @Test
    void levels() {
        assertEquals(0.5, amps(ALL, LoadCase.IDLE), 1e-9);
        assertEquals(2, amps(ALL, LoadCase.AVERAGE), 1e-9);
        assertEquals(6, amps(ALL, LoadCase.PEAK), 1e-9);
        assertEquals(6, amps(ALL, LoadCase.AVERAGE.peaking(List.of("L"))), 1e-9);
        assertEquals(2, amps(ALL, LoadCase.AVERAGE.peaking(List.of("M"))), 1e-9);
    }

    @Test
    void events() {
        assertEquals(3, amps(ALL, during(LoadCase.AVERAGE, "amps")), 1e-9);
        assertEquals(6, amps(ALL, during(LoadCase.IDLE, "peak")), 1e-9);
        assertEquals(0.5, amps(ALL, during(LoadCase.IDLE, "elsewhere")), 1e-9);
        assertEquals((12 - Math.sqrt(144 - 2)) / 0.1, amps(ALL, during(LoadCase.AVERAGE, "watts")), 1e-9);
    }

    /** A range names every unit in it. */
    @Test
    void rangeOfUnits() {
        Circuit circuit = Bench.read("", """
                {"units": [{"ref": "A", "type": "PACK12"}, {"ref": "L2", "type": "BOX12", "loads": [%s]}],
                 "leads": [%s]%s}
                """.formatted(ALL, Bench.leads("A-P", "L2-S-1", "L2-S-2", "A-N"), EVENTS));
        Event event = circuit.wiring().aircraft().events().get(0);
        assertEquals(
                9,
                Flows.load(Flows.flow(circuit, LoadCase.AVERAGE.during(event)), "L2")
                        .amps(),
                1e-9);
    }

    /** A peak below the average is no less than the average; a load that has none to tell draws its average. */
    @Test
    void peaks() {
        assertEquals(2, amps("{\"rail\": \"r\", \"averageA\": 2, \"peakA\": 1}", LoadCase.PEAK), 1e-9);
        assertEquals(2, amps("{\"rail\": \"r\", \"averageA\": 2, \"peakA\": \"n/a\"}", LoadCase.PEAK), 1e-9);
    }

    /** 24 W at 12 V are 2 A for a constant current, 6 ohm for a resistance. */
    @Test
    void laws() {
        String watts = "{\"rail\": \"r\", \"averageW\": 24, \"law\": \"%s\"}";
        assertEquals(2, amps(watts.formatted("constant current"), LoadCase.AVERAGE), 1e-9);
        assertEquals(12 / 6.05, amps(watts.formatted("resistance"), LoadCase.AVERAGE), 1e-9);
        assertEquals(
                (12 - Math.sqrt(144 - 4.8)) / 0.1, amps(watts.formatted("constant power"), LoadCase.AVERAGE), 1e-9);
        String amps = "{\"rail\": \"r\", \"averageA\": 2, \"law\": \"constant power\"}";
        assertEquals((12 - Math.sqrt(144 - 4.8)) / 0.1, amps(amps, LoadCase.AVERAGE), 1e-9);
    }

    @Test
    void missingFiguresAreSaid() {
        Circuit none = Bench.loop("{\"rail\": \"r\", \"averageA\": \"?\"}", "");
        PowerFlow flow = Flows.flow(none, LoadCase.AVERAGE);
        assertEquals(List.of("average current on r of L: left out"), Bench.missing(flow));
        assertEquals(List.of(), flow.loads());
        Circuit noPeak = Bench.loop(Bench.amps(2), "");
        PowerFlow peak = Flows.flow(noPeak, LoadCase.PEAK);
        assertEquals(List.of("peak current on r of L: 2 A"), Bench.missing(peak));
        assertEquals(2, Flows.load(peak, "L").amps(), 1e-9);
        assertEquals(
                List.of("current at rest on r of L: 2 A"), Bench.missing(OperatingPoint.of(noPeak, LoadCase.IDLE)));
    }

    @Test
    void missingConductorsAreSaid() {
        Circuit circuit = Bench.read("", """
                {"units": [{"ref": "A", "type": "PACK12"}, {"ref": "L", "type": "BOX12", "loads": [%s]}],
                 "leads": [{"id": "W1", "from": "A-P", "to": "L-S-1", "lengthMm": 100},
                           {"id": "W2", "from": "L-S-2", "to": "A-N", "awg": 20}]}
                """.formatted(Bench.amps(2)));
        assertEquals(
                List.of("wire size of W1: 0 mOhm", "length of W2: 0 mOhm"),
                Bench.missing(OperatingPoint.of(circuit, LoadCase.AVERAGE)));
    }
}
