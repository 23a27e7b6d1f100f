package ringout.plan.cut;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;

/**
 * The links of least cost without which no task waits for itself: a minimum feedback arc set among the removable links.
 *
 * <p>Branch and bound: of a shortest ring one removable link must go; each is tried in turn, those tried before are kept.
 * NP-hard in general; the rings of a build are few. When it looks too long, the best cut found until then is given, and
 * {@link #proven} says so.
 */
public final class CheapestCut {
    private static final int PATIENCE = 20_000;

    private final int tasks;
    private final List<Link> links;
    private final List<List<Integer>> out = new ArrayList<>();
    private final BitSet gone = new BitSet();
    private final BitSet kept = new BitSet();
    private Optional<BitSet> best = Optional.empty();
    private double bestMinutes = Double.POSITIVE_INFINITY;
    private int looked;

    private CheapestCut(int tasks, List<Link> links) {
        this.tasks = tasks;
        this.links = links;
        for (int task = 0; task < tasks; task++) {
            out.add(new ArrayList<>(2));
        }
        for (int link = 0; link < links.size(); link++) {
            out.get(links.get(link).first()).add(link);
        }
        branch(0);
    }

    /** {@return the cheapest cut of the rings among tasks numbered from 0} */
    public static CheapestCut of(int tasks, List<Link> links) {
        return new CheapestCut(tasks, List.copyOf(links));
    }

    /** {@return numbers of the links to do without, none when there is no ring; empty when some ring cannot be cut} */
    public Optional<List<Integer>> links() {
        return best.map(cut -> cut.stream().boxed().toList());
    }

    /** {@return what the cut costs in minutes; infinite when there is none} */
    public double minutes() {
        return bestMinutes;
    }

    /** {@return whether no cheaper cut exists; false when the search was given up} */
    public boolean proven() {
        return looked <= PATIENCE;
    }

    private void branch(double minutes) {
        if (minutes >= bestMinutes || ++looked > PATIENCE) {
            return;
        }
        List<Integer> ring = ring();
        if (ring.isEmpty()) {
            best = Optional.of((BitSet) gone.clone());
            bestMinutes = minutes;
            return;
        }
        List<Integer> choices = ring.stream()
                .filter(link -> links.get(link).removable() && !kept.get(link))
                .sorted(Comparator.comparingDouble(link -> links.get(link).minutes()))
                .toList();
        for (int link : choices) {
            gone.set(link);
            branch(minutes + links.get(link).minutes());
            gone.clear(link);
            kept.set(link);
        }
        choices.forEach(kept::clear);
    }

    /** A ring with the fewest links among those left; nothing when there is none. */
    private List<Integer> ring() {
        List<Integer> shortest = List.of();
        BitSet stuck = stuck();
        for (int task = stuck.nextSetBit(0); task >= 0; task = stuck.nextSetBit(task + 1)) {
            List<Integer> ring = ring(task, stuck);
            if (!ring.isEmpty() && (shortest.isEmpty() || ring.size() < shortest.size())) {
                shortest = ring;
            }
        }
        return shortest;
    }

    /** Tasks left when those that wait for nothing left are taken away again and again. */
    private BitSet stuck() {
        int[] waits = new int[tasks];
        for (int link = 0; link < links.size(); link++) {
            if (!gone.get(link)) {
                waits[links.get(link).then()]++;
            }
        }
        BitSet left = new BitSet();
        left.set(0, tasks);
        Deque<Integer> free = new ArrayDeque<>();
        for (int task = 0; task < tasks; task++) {
            if (waits[task] == 0) {
                free.add(task);
            }
        }
        while (!free.isEmpty()) {
            int task = free.remove();
            left.clear(task);
            for (int link : out.get(task)) {
                if (!gone.get(link) && --waits[links.get(link).then()] == 0) {
                    free.add(links.get(link).then());
                }
            }
        }
        return left;
    }

    private List<Integer> ring(int start, BitSet within) {
        int[] cameBy = new int[tasks];
        Arrays.fill(cameBy, -1);
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            for (int link : out.get(open.remove())) {
                int then = links.get(link).then();
                if (gone.get(link) || !within.get(then)) {
                    continue;
                }
                if (then == start) {
                    return way(start, link, cameBy);
                }
                if (cameBy[then] < 0) {
                    cameBy[then] = link;
                    open.add(then);
                }
            }
        }
        return List.of();
    }

    private List<Integer> way(int start, int closing, int[] cameBy) {
        List<Integer> ring = new ArrayList<>(List.of(closing));
        for (int task = links.get(closing).first();
                task != start;
                task = links.get(cameBy[task]).first()) {
            ring.add(0, cameBy[task]);
        }
        return ring;
    }
}
