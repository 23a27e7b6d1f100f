package ringout.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.order.Before;
import ringout.model.Aircraft;
import ringout.model.AsBuilt;
import ringout.model.Step;
import ringout.model.shape.Shape;
import ringout.plan.power.PowerUp;
import ringout.plan.power.PowerUps;
import ringout.plan.task.TaskNet;
import ringout.read.AircraftReader;

/** Steps that are made to wait for other steps, at random: rings found where JGraphT finds one, and none left after the cut. */
class InjectedRingsTest {
    private static final int ROUNDS = 30;

    private static Aircraft waiting(Aircraft clean, int step, int later) {
        Shape<Step> shape = Shape.of(Step.class);
        List<Step> steps = new ArrayList<>(clean.record().steps());
        steps.set(
                step,
                shape.with(steps.get(step), "after", List.of(steps.get(later).id())));
        AsBuilt record = Shape.of(AsBuilt.class).with(clean.record(), "steps", List.copyOf(steps));
        return Shape.of(Aircraft.class).with(clean, "record", record);
    }

    private static boolean hasRing(int tasks, List<Before> links) {
        DirectedMultigraph<Integer, DefaultEdge> graph = new DirectedMultigraph<>(DefaultEdge.class);
        for (int task = 0; task < tasks; task++) {
            graph.addVertex(task);
        }
        links.forEach(link -> graph.addEdge(link.first(), link.then()));
        return new CycleDetector<>(graph).detectCycles();
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void ringsAreFoundAndCut(String sample) {
        Aircraft clean = AircraftReader.read(Path.of("samples", sample)).aircraft();
        PowerUp powerUp = PowerUps.of(Circuit.all(Wiring.of(clean)).get(0));
        int count = clean.record().steps().size();
        Random chance = new Random(11);
        int found = 0;
        for (int round = 0; round < ROUNDS; round++) {
            int step = chance.nextInt(count - 1);
            int later = step + 1 + chance.nextInt(count - step - 1);
            Circuit circuit =
                    Circuit.all(Wiring.of(waiting(clean, step, later))).get(0);
            TaskNet net = TaskNet.of(circuit, powerUp);
            Rings rings = new Rings(net);
            String told = "step " + step + " after " + later;
            boolean ring = hasRing(net.tasks().size(), net.links());
            assertEquals(ring, !rings.rings().isEmpty(), told);
            assertTrue(rings.open(), told);
            assertFalse(hasRing(net.tasks().size(), rings.kept()), told);
            rings.rings().forEach(InjectedRingsTest::isClosed);
            found += ring ? 1 : 0;
        }
        assertTrue(found > ROUNDS / 4, found + " rings only");
    }

    private static void isClosed(Ring ring) {
        assertEquals(ring.words().size(), ring.links().size());
        for (int i = 0; i < ring.links().size(); i++) {
            assertEquals(
                    ring.links().get(i).then(),
                    ring.links().get((i + 1) % ring.links().size()).first());
        }
        assertTrue(ring.links().containsAll(ring.cut()));
    }
}
