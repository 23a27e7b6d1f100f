package ringout.draw.spacing;

import java.util.ArrayList;
import java.util.List;

/**
 * Heights of a stack of things that must keep their order and distances, each as near as can be to where its wires want
 * it.
 *
 * <p>Exact least sum of weighted distances: isotonic regression in the L1 norm by pooling neighbours that would change
 * places, each pool at the weighted median of its wishes (the pool-adjacent-violators method, Barlow and others 1972,
 * from memory). Medians, and so whole steps: a majority of wires runs straight.
 */
public final class Isotonic {
    /** Neighbours that stand as close as they may, with the wishes of all of them in ascending order. */
    private static final class Pool {
        private final int[] wishes;
        private final int[] weights;
        private final int members;
        private final int height;

        private Pool(int[] wishes, int[] weights, int members) {
            this.wishes = wishes;
            this.weights = weights;
            this.members = members;
            this.height = median();
        }

        private int median() {
            int all = 0;
            for (int weight : weights) {
                all += weight;
            }
            int sum = 0;
            int i = 0;
            while (2 * (sum + weights[i]) < all) {
                sum += weights[i];
                i++;
            }
            return wishes[i];
        }

        private static Pool merged(Pool a, Pool b) {
            int n = a.wishes.length + b.wishes.length;
            int[] wishes = new int[n];
            int[] weights = new int[n];
            int i = 0;
            for (int k = 0; k < n; k++) {
                int j = k - i;
                boolean fromA = j >= b.wishes.length || (i < a.wishes.length && a.wishes[i] <= b.wishes[j]);
                wishes[k] = fromA ? a.wishes[i] : b.wishes[j];
                weights[k] = fromA ? a.weights[i] : b.weights[j];
                i += fromA ? 1 : 0;
            }
            return new Pool(wishes, weights, a.members + b.members);
        }
    }

    private final int[] distance;
    private final List<List<Pool>> wishes = new ArrayList<>();

    /** A stack whose member i must stand at least distance[i] steps below member 0's height. */
    public Isotonic(int[] distance) {
        this.distance = distance.clone();
        for (int i = 0; i < distance.length; i++) {
            wishes.add(new ArrayList<>());
        }
    }

    /** Says where a member wants to stand, and how much that weighs; the weight is positive. */
    public void wish(int member, int height, int weight) {
        wishes.get(member).add(new Pool(new int[] {height - distance[member]}, new int[] {weight}, 0));
    }

    /** {@return the heights; every member needs a wish; the lowest and highest bound the first and last member} */
    public int[] solve(int lowest, int highest) {
        List<Pool> pools = new ArrayList<>();
        for (List<Pool> own : wishes) {
            Pool pool = own.get(0);
            for (Pool wish : own.subList(1, own.size())) {
                pool = Pool.merged(pool, wish);
            }
            pools.add(new Pool(pool.wishes, pool.weights, 1));
            while (pools.size() > 1 && pools.get(pools.size() - 2).height > pools.get(pools.size() - 1).height) {
                Pool last = pools.remove(pools.size() - 1);
                pools.set(pools.size() - 1, Pool.merged(pools.get(pools.size() - 1), last));
            }
        }
        return heights(pools, lowest, highest);
    }

    private int[] heights(List<Pool> pools, int lowest, int highest) {
        int[] heights = new int[distance.length];
        int most = Math.max(lowest, highest - distance[distance.length - 1]);
        int member = 0;
        for (Pool pool : pools) {
            int height = Math.max(lowest, Math.min(most, pool.height));
            for (int i = 0; i < pool.members; i++) {
                heights[member] = height + distance[member];
                member++;
            }
        }
        return heights;
    }
}
