package ringout.plan.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleDirectedGraph;
import org.jgrapht.traverse.TopologicalOrderIterator;
import org.junit.jupiter.api.Test;

/** Walking and turning held against the exact optimum, a dynamic programme over (done, place), and JGraphT's plain order. */
class SetupOrderTest {
    private static final int ROUNDS = 100;

    /** Work with its links, so that others can be asked too. */
    private record Plan(Work work, List<int[]> links) {}

    /** About the mix of a real stage: 6 zones, each task after about 1.5 earlier ones, half of them reached either way. */
    private static Plan random(Random chance, int tasks, boolean turning) {
        List<Place> places = new ArrayList<>();
        for (int task = 0; task < tasks; task++) {
            Side side = List.of(Side.UPRIGHT, Side.BELLY_UP, Side.EITHER).get(chance.nextInt(3));
            places.add(new Place(chance.nextInt(6), turning ? side : Side.EITHER));
        }
        Work work = Work.of(places);
        List<int[]> links = new ArrayList<>();
        for (int then = 1; then < tasks; then++) {
            for (int needed = chance.nextInt(4); needed > 0; needed--) {
                int first = chance.nextInt(then);
                work.before(first, then);
                links.add(new int[] {first, then});
            }
        }
        return new Plan(work, links);
    }

    private static List<Integer> topological(Plan plan) {
        SimpleDirectedGraph<Integer, DefaultEdge> graph = new SimpleDirectedGraph<>(DefaultEdge.class);
        for (int task = 0; task < plan.work().count(); task++) {
            graph.addVertex(task);
        }
        plan.links().forEach(link -> graph.addEdge(link[0], link[1]));
        List<Integer> order = new ArrayList<>();
        new TopologicalOrderIterator<>(graph).forEachRemaining(order::add);
        return order;
    }

    /** The exact least, with no shortcut: every ready task is tried next. */
    private static double optimum(Work work, Moving moving) {
        return least(work, moving, 0, Place.START, new HashMap<>());
    }

    private record Seen(int done, Place at) {}

    private static double least(Work work, Moving moving, int done, Place at, Map<Seen, Double> known) {
        if (done == (1 << work.count()) - 1) {
            return 0;
        }
        Seen now = new Seen(done, at);
        Double told = known.get(now);
        if (told != null) {
            return told;
        }
        double best = Double.POSITIVE_INFINITY;
        BitSet set = BitSet.valueOf(new long[] {done});
        for (int task = 0; task < work.count(); task++) {
            if (!set.get(task) && work.ready(task, set)) {
                Place next = work.place(task).from(at);
                double rest = least(work, moving, done | 1 << task, next, known);
                best = Math.min(best, moving.minutes(at, next) + rest);
            }
        }
        known.put(now, best);
        return best;
    }

    private static void isAnOrder(Plan plan, List<Integer> order) {
        assertEquals(plan.work().count(), new HashSet<>(order).size());
        assertEquals(plan.work().count(), order.size());
        plan.links().forEach(link -> assertTrue(order.indexOf(link[0]) < order.indexOf(link[1])));
    }

    private static double meanRatio(int tasks, boolean turning, Moving moving) {
        Random chance = new Random(20_260);
        double found = 0;
        double plain = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Plan plan = random(chance, tasks, turning);
            List<Integer> order = SetupOrder.of(plan.work(), moving, Place.START);
            isAnOrder(plan, order);
            double least = optimum(plan.work(), moving);
            double minutes = plan.work().minutes(order, moving, Place.START);
            assertTrue(minutes >= least - 1e-9, minutes + " below the optimum " + least);
            found += minutes / least;
            List<Integer> topological = topological(plan);
            isAnOrder(plan, topological);
            plain += plan.work().minutes(topological, moving, Place.START) / least;
        }
        assertTrue(plain / ROUNDS > 1.3, "random work too easy to tell anything: " + plain / ROUNDS);
        return found / ROUNDS;
    }

    @Test
    void setUpsAreWithinFiveHundredthsOfTheOptimum() {
        double ratio = meanRatio(14, false, Moving.COUNTED);
        assertTrue(ratio <= 1.05, "mean " + ratio);
    }

    @Test
    void walkingAndTurningAreToo() {
        double ratio = meanRatio(13, true, Moving.USUAL);
        assertTrue(ratio <= 1.05, "mean " + ratio);
    }

    @Test
    void twentyTasksAreToo() {
        Random chance = new Random(3);
        double found = 0;
        int rounds = 10;
        for (int round = 0; round < rounds; round++) {
            Plan plan = random(chance, 20, false);
            List<Integer> order = SetupOrder.of(plan.work(), Moving.COUNTED, Place.START);
            isAnOrder(plan, order);
            found += plan.work().minutes(order, Moving.COUNTED, Place.START) / optimum(plan.work(), Moving.COUNTED);
        }
        assertTrue(found / rounds <= 1.05, "mean " + found / rounds);
    }

    /** Above, below, above costs two turns; all that is above first costs one. */
    @Test
    void turnsTheAircraftOnce() {
        Work work = Work.of(List.of(
                new Place(0, Side.UPRIGHT),
                new Place(0, Side.BELLY_UP),
                new Place(0, Side.UPRIGHT),
                new Place(0, Side.EITHER)));
        List<Integer> order = SetupOrder.of(work, Moving.USUAL, Place.START);
        assertEquals(3.5, work.minutes(order, Moving.USUAL, Place.START));
        assertEquals(List.of(0, 2, 3, 1), order);
    }

    @Test
    void refusesARing() {
        Work ring = Work.of(List.of(new Place(0, Side.EITHER), new Place(1, Side.EITHER)));
        ring.before(0, 1).before(1, 0);
        assertThrows(IllegalArgumentException.class, () -> SetupOrder.of(ring, Moving.USUAL, Place.START));
    }
}
