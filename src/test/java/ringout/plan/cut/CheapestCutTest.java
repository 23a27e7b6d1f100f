package ringout.plan.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jgrapht.alg.cycle.CycleDetector;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.DirectedMultigraph;
import org.junit.jupiter.api.Test;

/** The cheapest cut held against every subset of links, with JGraphT's cycle detector as the judge of rings. */
class CheapestCutTest {
    private static boolean hasRing(int tasks, List<Link> links, int without) {
        DirectedMultigraph<Integer, DefaultEdge> graph = new DirectedMultigraph<>(DefaultEdge.class);
        for (int task = 0; task < tasks; task++) {
            graph.addVertex(task);
        }
        for (int link = 0; link < links.size(); link++) {
            if ((without & 1 << link) == 0) {
                graph.addEdge(links.get(link).first(), links.get(link).then());
            }
        }
        return new CycleDetector<>(graph).detectCycles();
    }

    private static double bruteForce(int tasks, List<Link> links) {
        double best = Double.POSITIVE_INFINITY;
        for (int without = 0; without < 1 << links.size(); without++) {
            double minutes = 0;
            for (int link = 0; link < links.size(); link++) {
                minutes += (without & 1 << link) == 0 ? 0 : links.get(link).minutes();
            }
            if (minutes < best && !hasRing(tasks, links, without)) {
                best = minutes;
            }
        }
        return best;
    }

    private static List<Link> random(Random chance, int tasks, int count) {
        List<Link> links = new ArrayList<>();
        while (links.size() < count) {
            int first = chance.nextInt(tasks);
            int then = chance.nextInt(tasks);
            if (first != then) {
                double minutes = chance.nextInt(5) == 0 ? Double.POSITIVE_INFINITY : 1 + chance.nextInt(9);
                links.add(new Link(first, then, minutes));
            }
        }
        return links;
    }

    @Test
    void isAsCheapAsTheBestOfAllSubsets() {
        Random chance = new Random(7);
        int cut = 0;
        int impossible = 0;
        for (int round = 0; round < 120; round++) {
            List<Link> links = random(chance, 4 + chance.nextInt(2), 9 + chance.nextInt(3));
            CheapestCut found = CheapestCut.of(5, links);
            assertEquals(bruteForce(5, links), found.minutes(), links.toString());
            assertTrue(found.proven());
            assertEquals(found.links().isEmpty(), Double.isInfinite(found.minutes()));
            found.links().ifPresent(gone -> {
                int without = gone.stream().mapToInt(link -> 1 << link).sum();
                assertEquals(false, hasRing(5, links, without));
            });
            cut += found.minutes() > 0 && found.links().isPresent() ? 1 : 0;
            impossible += found.links().isEmpty() ? 1 : 0;
        }
        assertTrue(cut > 20 && impossible > 10, cut + " cut, " + impossible + " impossible");
    }

    @Test
    void noRingNeedsNoCut() {
        CheapestCut found = CheapestCut.of(3, List.of(new Link(0, 1, 5), new Link(1, 2, 5), new Link(0, 2, 5)));
        assertEquals(List.of(), found.links().orElseThrow());
        assertEquals(0, found.minutes());
    }
}
