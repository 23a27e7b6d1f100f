package ringout.draw.spacing;

import java.util.ArrayList;
import java.util.Comparator;
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
    private record Wish(int height, int weight) {}

    private static final class Pool {
        private final List<Wish> wishes = new ArrayList<>();
        private int members;
        private int height;

        private void settle() {
            wishes.sort(Comparator.comparingInt(Wish::height));
            int half = wishes.stream().mapToInt(Wish::weight).sum();
            int sum = 0;
            for (Wish wish : wishes) {
                sum += 2 * wish.weight();
                if (sum >= half) {
                    height = wish.height();
                    return;
                }
            }
        }
    }

    private final int[] distance;
    private final List<List<Wish>> wishes = new ArrayList<>();

    /** A stack whose member i must stand at least distance[i] steps below member 0's height. */
    public Isotonic(int[] distance) {
        this.distance = distance.clone();
        for (int i = 0; i < distance.length; i++) {
            wishes.add(new ArrayList<>());
        }
    }

    /** Says where a member wants to stand, and how much that weighs. */
    public void wish(int member, int height, int weight) {
        wishes.get(member).add(new Wish(height - distance[member], weight));
    }

    /** {@return the heights; every member needs a wish; the lowest and highest bound the first and last member} */
    public int[] solve(int lowest, int highest) {
        List<Pool> pools = new ArrayList<>();
        for (List<Wish> own : wishes) {
            Pool pool = new Pool();
            pool.wishes.addAll(own);
            pool.members = 1;
            pool.settle();
            pools.add(pool);
            while (pools.size() > 1 && pools.get(pools.size() - 2).height > pools.get(pools.size() - 1).height) {
                merge(pools);
            }
        }
        return heights(pools, lowest, highest);
    }

    private static void merge(List<Pool> pools) {
        Pool last = pools.remove(pools.size() - 1);
        Pool before = pools.get(pools.size() - 1);
        before.wishes.addAll(last.wishes);
        before.members += last.members;
        before.settle();
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
