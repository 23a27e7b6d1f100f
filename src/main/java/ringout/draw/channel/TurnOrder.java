package ringout.draw.channel;

import java.util.Arrays;
import java.util.List;

/**
 * The order from left to right in which the nets of a channel turn, chosen for few crossings.
 *
 * <p>A linear ordering problem over pair costs, improved by sifting: each net in turn is moved to its best place until
 * nothing improves. Deterministic; O(n²) a pass, few passes.
 */
public final class TurnOrder {
    /** Weight of two nets lying on each other, against 1 for a crossing. */
    private static final int OVERLAP = 1000;

    private static final int MOST_PASSES = 12;

    private final List<Net> nets;
    private final int[][] cost;
    private final int[] order;

    private TurnOrder(List<Net> nets, List<Mates> mates) {
        this.nets = nets;
        int n = nets.size();
        this.cost = new int[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                cost[i][j] = i == j ? 0 : costOfBefore(nets.get(i), nets.get(j));
            }
        }
        for (Mates pair : mates) {
            cost[pair.first()][pair.second()] = 0;
            cost[pair.second()][pair.first()] = OVERLAP;
        }
        this.order = firstGuess(nets);
    }

    /** Two nets of one wire, by number, of which the first must turn before the second. */
    record Mates(int first, int second) {}

    /** {@return the order for these nets, none of which may be straight} */
    public static TurnOrder of(List<Net> nets) {
        return of(nets, List.of());
    }

    /** {@return the order for these nets with some pairs' order given} */
    static TurnOrder of(List<Net> nets, List<Mates> mates) {
        TurnOrder turns = new TurnOrder(nets, mates);
        turns.sift();
        return turns;
    }

    /** Crossings and overlaps when the first net turns to the left of the second. */
    private static int costOfBefore(Net first, Net second) {
        int cost = 0;
        cost += second.leftA() ? costOfLine(first, second.a()) : 0;
        cost += second.leftB() ? costOfLine(first, second.b()) : 0;
        cost += first.leftA() ? 0 : costOfLine(second, first.a());
        cost += first.leftB() ? 0 : costOfLine(second, first.b());
        return cost;
    }

    private static int costOfLine(Net net, int height) {
        return net.spans(height) ? 1 : net.ends(height) ? OVERLAP : 0;
    }

    /** Brackets on the left first, short ones outermost; brackets on the right last; between them lower nets first. */
    private static int[] firstGuess(List<Net> nets) {
        Integer[] all = new Integer[nets.size()];
        Arrays.setAll(all, i -> i);
        Arrays.sort(all, (i, j) -> Double.compare(rank(nets.get(i)), rank(nets.get(j))));
        return Arrays.stream(all).mapToInt(Integer::intValue).toArray();
    }

    private static double rank(Net net) {
        double span = net.bottom() - net.top();
        if (net.leftA() && net.leftB()) {
            return -1e6 + span;
        }
        if (!net.leftA() && !net.leftB()) {
            return 1e6 - span;
        }
        boolean falling = (net.leftA() ? net.a() : net.b()) < (net.leftA() ? net.b() : net.a());
        return falling ? -net.top() : net.top();
    }

    private void sift() {
        for (int pass = 0; pass < MOST_PASSES; pass++) {
            boolean moved = false;
            for (int net = 0; net < order.length; net++) {
                moved |= siftOne(net);
            }
            if (!moved) {
                return;
            }
        }
    }

    private boolean siftOne(int net) {
        int from = placeOf(net);
        int best = from;
        int bestGain = 0;
        int gain = 0;
        for (int p = from - 1; p >= 0; p--) {
            gain += cost[order[p]][net] - cost[net][order[p]];
            if (gain > bestGain) {
                bestGain = gain;
                best = p;
            }
        }
        gain = 0;
        for (int p = from + 1; p < order.length; p++) {
            gain += cost[net][order[p]] - cost[order[p]][net];
            if (gain > bestGain) {
                bestGain = gain;
                best = p;
            }
        }
        shift(from, best);
        return best != from;
    }

    private int placeOf(int net) {
        int place = 0;
        while (order[place] != net) {
            place++;
        }
        return place;
    }

    private void shift(int from, int to) {
        int net = order[from];
        if (from < to) {
            System.arraycopy(order, from + 1, order, from, to - from);
        } else {
            System.arraycopy(order, to, order, to + 1, from - to);
        }
        order[to] = net;
    }

    /** {@return the nets' numbers from left to right} */
    public int[] order() {
        return order.clone();
    }

    /** {@return how many crossings the order leaves among these nets} */
    public int crossings() {
        int crossings = 0;
        for (int i = 0; i < order.length; i++) {
            for (int j = i + 1; j < order.length; j++) {
                crossings += cost[order[i]][order[j]] % OVERLAP;
            }
        }
        return crossings;
    }

    /** {@return how many pairs still lie on each other; they need a second turn} */
    public int overlaps() {
        int overlaps = 0;
        for (int i = 0; i < order.length; i++) {
            for (int j = i + 1; j < order.length; j++) {
                overlaps += cost[order[i]][order[j]] / OVERLAP;
            }
        }
        return overlaps;
    }

    /** {@return the first pair that lies on each other, left then right, as numbers of nets; empty if there is none} */
    public int[] firstOverlap() {
        for (int i = 0; i < order.length; i++) {
            for (int j = i + 1; j < order.length; j++) {
                if (cost[order[i]][order[j]] >= OVERLAP) {
                    return new int[] {order[i], order[j]};
                }
            }
        }
        return new int[0];
    }

    /** {@return for each net its track, from 0 at the left; nets that do not touch may share one} */
    public int[] tracks() {
        int[] track = new int[order.length];
        for (int i = 0; i < order.length; i++) {
            for (int j = 0; j < i; j++) {
                if (nets.get(order[i]).touches(nets.get(order[j]))) {
                    track[order[i]] = Math.max(track[order[i]], track[order[j]] + 1);
                }
            }
        }
        return track;
    }
}
