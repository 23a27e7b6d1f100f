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
 * <p>Branch and bound: of a ring one removable link must go; each is tried in turn, those tried before are kept. A lower bound
 * of what is still to pay comes from rings that share no minutes (local ratio, Bar-Yehuda and Even 1985, cited from memory):
 * the least of a ring is paid by all its links, ring after ring, until none is left unpaid. What is paid in full is a cut too,
 * and the first to beat. NP-hard in general; the rings of a build are few. When it looks too long, the best cut found until
 * then is given, and {@link #proven} says so.
 */
public final class CheapestCut {
    private static final int PATIENCE = 2_000;

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
        if (minutes >= bestMinutes || ++looked > PATIENCE || minutes + bound(minutes) >= bestMinutes) {
            return;
        }
        List<Integer> ring = ring(gone);
        if (ring.isEmpty()) {
            keep((BitSet) gone.clone(), minutes);
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

    private void keep(BitSet cut, double minutes) {
        if (minutes < bestMinutes) {
            best = Optional.of(cut);
            bestMinutes = minutes;
        }
    }

    /** The least that is still to pay; infinite when a ring of kept links is left. What is paid in full is tried as a cut. */
    private double bound(double sofar) {
        double[] left = links.stream().mapToDouble(Link::minutes).toArray();
        BitSet paid = (BitSet) gone.clone();
        List<Integer> ofPaid = new ArrayList<>();
        double sum = 0;
        for (List<Integer> ring = ring(paid); !ring.isEmpty(); ring = ring(paid)) {
            List<Integer> payers = ring.stream()
                    .filter(link -> links.get(link).removable() && !kept.get(link))
                    .toList();
            if (payers.isEmpty()) {
                return Double.POSITIVE_INFINITY;
            }
            double least = payers.stream().mapToDouble(link -> left[link]).min().orElse(0);
            sum += least;
            for (int link : payers) {
                left[link] -= least;
                if (left[link] <= 0) {
                    paid.set(link);
                    ofPaid.add(link);
                }
            }
        }
        thin(paid, ofPaid, sofar);
        return sum;
    }

    /** Takes back what a cut does not need, the last first. */
    private void thin(BitSet paid, List<Integer> ofPaid, double sofar) {
        double minutes = sofar;
        for (int i = ofPaid.size() - 1; i >= 0; i--) {
            paid.clear(ofPaid.get(i));
            if (!ring(paid).isEmpty()) {
                paid.set(ofPaid.get(i));
                minutes += links.get(ofPaid.get(i)).minutes();
            }
        }
        keep(paid, minutes);
    }

    /** A ring with few links when some are away; nothing when there is none. */
    private List<Integer> ring(BitSet away) {
        BitSet stuck = stuck(away);
        for (int task = stuck.nextSetBit(0); task >= 0; task = stuck.nextSetBit(task + 1)) {
            List<Integer> ring = ring(task, stuck, away);
            if (!ring.isEmpty()) {
                return ring;
            }
        }
        return List.of();
    }

    /** Tasks left when those that wait for nothing left are taken away again and again. */
    private BitSet stuck(BitSet away) {
        int[] waits = new int[tasks];
        for (int link = 0; link < links.size(); link++) {
            if (!away.get(link)) {
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
                if (!away.get(link) && --waits[links.get(link).then()] == 0) {
                    free.add(links.get(link).then());
                }
            }
        }
        return left;
    }

    private List<Integer> ring(int start, BitSet within, BitSet away) {
        int[] cameBy = new int[tasks];
        Arrays.fill(cameBy, -1);
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        while (!open.isEmpty()) {
            for (int link : out.get(open.remove())) {
                int then = links.get(link).then();
                if (away.get(link) || !within.get(then)) {
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
