package ringout.graph.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Step;
import ringout.model.shape.Shape;
import ringout.read.AircraftReader;

/** Rings in the order of building, held against the cycle detector of JGraphT. */
class PrecedenceTest {
    private static Precedence of(Aircraft aircraft) {
        Wiring wiring = Wiring.of(aircraft);
        return Precedence.of(Circuit.all(wiring).get(0));
    }

    private static boolean hasCycle(Precedence order) {
        DirectedMultigraph<Integer, DefaultEdge> graph = new DirectedMultigraph<>(DefaultEdge.class);
        for (int act = 0; act < order.acts().size(); act++) {
            graph.addVertex(act);
        }
        order.edges().forEach(edge -> graph.addEdge(edge.first(), edge.then()));
        return new CycleDetector<>(graph).detectCycles();
    }

    /** The sample with one step waiting for another. */
    private static Aircraft waiting(Aircraft clean, int step, String after) {
        Shape<Step> shape = Shape.of(Step.class);
        List<Step> steps = new ArrayList<>(clean.record().steps());
        steps.set(step, shape.with(steps.get(step), "after", List.of(after)));
        var record = Shape.of(ringout.model.AsBuilt.class).with(clean.record(), "steps", List.copyOf(steps));
        return Shape.of(Aircraft.class).with(clean, "record", record);
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void findsARingExactlyWhereThereIsOne(String sample) {
        Aircraft clean = AircraftReader.read(Path.of("samples", sample)).aircraft();
        assertTrue(of(clean).rings().isEmpty());
        assertFalse(hasCycle(of(clean)));
        int rings = 0;
        List<Step> steps = clean.record().steps();
        for (int step = 0; step < steps.size(); step += 3) {
            for (int later = step; later < steps.size(); later += 5) {
                Precedence order = of(waiting(clean, step, steps.get(later).id()));
                assertEquals(hasCycle(order), !order.rings().isEmpty(), step + " after " + later);
                order.rings().forEach(PrecedenceTest::isClosed);
                rings += order.rings().size();
            }
        }
        assertTrue(rings > 0);
    }

    private static void isClosed(List<Before> ring) {
        for (int i = 0; i < ring.size(); i++) {
            assertEquals(ring.get(i).then(), ring.get((i + 1) % ring.size()).first());
        }
    }
}
