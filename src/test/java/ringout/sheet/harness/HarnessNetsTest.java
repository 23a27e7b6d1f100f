package ringout.sheet.harness;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.Pseudograph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.graph.SmallAircraft;
import ringout.graph.Wire;
import ringout.graph.Wiring;

/** Nets of the bare harness, counted again with JGraphT, and small ones by hand. */
class HarnessNetsTest {
    private static final String UNITS = """
            "units": [{"ref": "PK", "type": "PACK"}, {"ref": "B", "type": "BOARD"}, {"ref": "R", "type": "REG5"}],
            """;

    private static List<HarnessNet> nets(String rest) {
        return HarnessNets.of(Wiring.of(SmallAircraft.read("{\"name\": \"small\", " + UNITS + rest + "}")));
    }

    @ParameterizedTest
    @CsvSource({"linewarden, 145", "dewmaker, 170"})
    void linesAreContactsMinusNets(String sample, int lines) {
        Wiring wiring = Wiring.of(SmallAircraft.sample(sample));
        Graph<Integer, DefaultEdge> graph = new Pseudograph<>(DefaultEdge.class);
        for (Wire wire : wiring.wires()) {
            graph.addVertex(wire.fromPin());
            graph.addVertex(wire.toPin());
            graph.addEdge(wire.fromPin(), wire.toPin());
        }
        int parts = new ConnectivityInspector<>(graph).connectedSets().size();
        List<HarnessNet> nets = HarnessNets.of(wiring);
        assertEquals(parts, nets.size());
        assertEquals(
                graph.vertexSet().size() - parts,
                nets.stream().mapToInt(net -> net.lines().size()).sum());
        assertEquals(lines, nets.stream().mapToInt(net -> net.lines().size()).sum());
    }

    @Test
    void aJointIsNoPlaceForAMeter() {
        List<HarnessNet> nets = nets("""
                "joints": [{"id": "J1", "kind": "splice"}],
                "leads": [{"id": "W1", "from": "B-T1-1", "to": "J1"}, {"id": "W2", "from": "J1", "to": "R-IN-1"},
                          {"id": "W3", "from": "J1", "to": "B-T2-1"}]
                """);
        assertEquals(1, nets.size());
        assertEquals(3, nets.get(0).pins().size());
        assertEquals(2, nets.get(0).lines().size());
        assertEquals(
                List.of("W1", "W2"),
                nets.get(0).lines().get(0).wires().stream()
                        .map(wire -> wire.lead().id())
                        .toList());
        assertEquals(List.of(), nets.get(0).loops());
    }

    @Test
    void aConductorBesideAnotherIsTold() {
        List<HarnessNet> nets = nets("""
                "leads": [{"id": "W1", "from": "PK-N-1", "to": "B-BN-1"}, {"id": "W2", "from": "PK-N-1", "to": "B-BN-1"}]
                """);
        assertEquals(1, nets.get(0).lines().size());
        assertEquals(
                List.of("W2"),
                nets.get(0).loops().stream().map(wire -> wire.lead().id()).toList());
    }
}
