package ringout.draw.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import ringout.draw.channel.ChannelPlan.Turn;

class TurnOrderTest {
    private static Net across(int link, int left, int right) {
        return new Net(link, true, left, false, right);
    }

    @Test
    void parallelWiresThatFallDoNotCross() {
        TurnOrder order = TurnOrder.of(List.of(across(0, 0, 10), across(1, 2, 12), across(2, 4, 14)));
        assertEquals(0, order.crossings());
        assertEquals(0, order.overlaps());
    }

    @Test
    void nestedBracketsDoNotCross() {
        Net outer = new Net(0, true, 0, true, 10);
        Net inner = new Net(1, true, 2, true, 8);
        TurnOrder order = TurnOrder.of(List.of(outer, inner));
        assertEquals(0, order.crossings());
        assertTrue(order.tracks()[1] < order.tracks()[0], "the inner bracket stands nearer to its edge");
    }

    @Test
    void crossedPairNeedsASecondTurnAndGetsIt() {
        List<Net> pair = List.of(across(0, 0, 4), across(1, 4, 0));
        assertTrue(TurnOrder.of(pair).overlaps() > 0);
        ChannelPlan plan = ChannelPlan.of(pair);
        assertTrue(plan.clean());
        assertEquals(3, plan.turns(0).size() + plan.turns(1).size());
    }

    /** Few nets: never better than the best of all orders, and near it nineteen times in twenty. */
    @Test
    void siftingIsMostlyNearTheBestOfAllOrders() {
        Random random = new Random(1);
        int near = 0;
        for (int i = 0; i < 200; i++) {
            List<Net> nets = randomNets(random, 5);
            TurnOrder found = TurnOrder.of(nets);
            int best = Integer.MAX_VALUE;
            for (List<Net> order : permutations(nets)) {
                best = Math.min(best, 1000 * overlapsIn(order) + crossingsIn(order));
            }
            int cost = 1000 * found.overlaps() + found.crossings();
            assertTrue(cost >= best, "cheaper than the best of all orders: " + cost + " " + best);
            near += cost <= best + 2 ? 1 : 0;
        }
        assertTrue(near >= 190, near + " of 200 near the best");
    }

    /** Drawn on a lattice, no two wires share a piece, whatever the channel. */
    @Property(seed = "20261125", tries = 500)
    void noTwoWiresShareAPiece(@ForAll Random random) {
        List<Net> nets = randomNets(random, 14);
        ChannelPlan plan = ChannelPlan.of(nets);
        assertTrue(plan.clean());
        Set<String> used = new HashSet<>();
        for (int n = 0; n < nets.size(); n++) {
            for (String piece : piecesOf(nets.get(n), plan.turns(n), plan.tracks())) {
                assertTrue(used.add(piece), "net " + n + " shares " + piece);
            }
        }
    }

    private static List<Net> randomNets(Random random, int count) {
        Set<Integer> left = new HashSet<>();
        Set<Integer> right = new HashSet<>();
        List<Net> nets = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boolean leftA = random.nextInt(3) > 0;
            boolean leftB = random.nextInt(3) == 0;
            int a = free(random, leftA ? left : right);
            int b = free(random, leftB ? left : right);
            Net net = new Net(i, leftA, a, leftB, b);
            if (!net.straight()) {
                nets.add(net);
            }
        }
        return nets;
    }

    private static int free(Random random, Set<Integer> used) {
        int height = 2 * random.nextInt(12);
        while (!used.add(height)) {
            height += 2;
        }
        return height;
    }

    /** Unit pieces: of the line at a height between two tracks, and of a track between two heights. */
    private static List<String> piecesOf(Net net, List<Turn> turns, int tracks) {
        List<String> pieces = new ArrayList<>();
        int x = net.leftA() ? -1 : tracks;
        int y = net.a();
        for (Turn turn : turns) {
            assertEquals(y, turn.from());
            addLevel(pieces, y, x, turn.track());
            for (int h = Math.min(turn.from(), turn.to()); h < Math.max(turn.from(), turn.to()); h++) {
                pieces.add("track " + turn.track() + " height " + h);
            }
            x = turn.track();
            y = turn.to();
        }
        assertEquals(net.b(), y);
        addLevel(pieces, y, x, net.leftB() ? -1 : tracks);
        return pieces;
    }

    private static void addLevel(List<String> pieces, int y, int x1, int x2) {
        for (int x = Math.min(x1, x2); x < Math.max(x1, x2); x++) {
            pieces.add("height " + y + " after track " + x);
        }
    }

    private static int overlapsIn(List<Net> order) {
        return count(order, true);
    }

    private static int crossingsIn(List<Net> order) {
        return count(order, false);
    }

    /** Counted from the definition: the level line of one against the plumb line of the other. */
    private static int count(List<Net> order, boolean overlaps) {
        int count = 0;
        for (int i = 0; i < order.size(); i++) {
            for (int j = i + 1; j < order.size(); j++) {
                Net first = order.get(i);
                Net second = order.get(j);
                count += ends(second, true).stream()
                        .mapToInt(y -> hit(first, y, overlaps))
                        .sum();
                count += ends(first, false).stream()
                        .mapToInt(y -> hit(second, y, overlaps))
                        .sum();
            }
        }
        return count;
    }

    private static List<Integer> ends(Net net, boolean left) {
        List<Integer> ends = new ArrayList<>();
        if (net.leftA() == left) {
            ends.add(net.a());
        }
        if (net.leftB() == left) {
            ends.add(net.b());
        }
        return ends;
    }

    private static int hit(Net net, int y, boolean overlaps) {
        boolean end = y == net.a() || y == net.b();
        boolean inside = y > Math.min(net.a(), net.b()) && y < Math.max(net.a(), net.b());
        return overlaps ? (end ? 1 : 0) : inside ? 1 : 0;
    }

    private static List<List<Net>> permutations(List<Net> nets) {
        if (nets.isEmpty()) {
            return List.of(List.of());
        }
        List<List<Net>> all = new ArrayList<>();
        for (int i = 0; i < nets.size(); i++) {
            List<Net> rest = new ArrayList<>(nets);
            Net first = rest.remove(i);
            for (List<Net> tail : permutations(rest)) {
                List<Net> order = new ArrayList<>(List.of(first));
                order.addAll(tail);
                all.add(order);
            }
        }
        assertFalse(all.isEmpty());
        return all;
    }
}
