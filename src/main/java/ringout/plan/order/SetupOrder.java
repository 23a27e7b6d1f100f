package ringout.plan.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;

/**
 * Finds an order with little walking and turning.
 *
 * <p>What can be done where one stands is done before one moves on: it costs nothing and can only help later. So the search
 * is over moves alone. Of the ways that have moved equally often, those with the least minutes so far and a lower bound of
 * what must follow are kept (a beam). The problem is the sequential ordering problem, which is NP-hard; on small work the
 * beam holds every way there is.
 *
 * <p>Time: moves by beam by zones by tasks.
 */
public final class SetupOrder {
    private static final int BEAM = 64;

    private final Work work;
    private final Moving moving;
    private final Place from;

    private SetupOrder(Work work, Moving moving, Place from) {
        this.work = work;
        this.moving = moving;
        this.from = from;
    }

    /**
     * {@return the tasks in the order found, each after all it needs}
     *
     * @param from where one stands before
     * @throws IllegalArgumentException when tasks wait for each other in a ring
     */
    public static List<Integer> of(Work work, Moving moving, Place from) {
        return new SetupOrder(work, moving, from).search();
    }

    /** A way so far: what is done, where one stands, and how it came to that. */
    private record Way(BitSet done, Place at, double minutes, double bound, List<Integer> tasks) {}

    /** What is done and where one stands: two ways equal in that differ in their past only. */
    private record Now(BitSet done, Place at) {}

    private static final Comparator<Way> BEST = Comparator.comparingDouble(Way::bound)
            .thenComparing(way -> -way.tasks().size());

    private List<Integer> search() {
        List<Way> beam = List.of(settle(new BitSet(), from, 0, List.of()));
        List<Way> ended = new ArrayList<>();
        while (!beam.isEmpty()) {
            Map<Now, Way> next = new HashMap<>();
            List<Now> met = new ArrayList<>();
            for (Way way : beam) {
                if (way.tasks().size() == work.count()) {
                    ended.add(way);
                } else {
                    moves(way, next, met);
                }
            }
            beam = met.stream().map(next::get).sorted(BEST).limit(BEAM).toList();
            double best = ended.stream().mapToDouble(Way::minutes).min().orElse(Double.POSITIVE_INFINITY);
            beam = beam.stream().filter(way -> way.bound() < best).toList();
        }
        return ended.stream()
                .min(Comparator.comparingDouble(Way::minutes))
                .orElseThrow(() -> new IllegalArgumentException("tasks wait for each other"))
                .tasks();
    }

    private void moves(Way way, Map<Now, Way> next, List<Now> met) {
        TreeSet<Place> targets =
                new TreeSet<>(Comparator.comparingInt(Place::zone).thenComparing(Place::side));
        for (int task = way.done().nextClearBit(0);
                task < work.count();
                task = way.done().nextClearBit(task + 1)) {
            if (work.ready(task, way.done())) {
                targets.add(work.place(task).from(way.at()));
            }
        }
        for (Place target : targets) {
            double minutes = way.minutes() + moving.minutes(way.at(), target);
            Way moved = settle(way.done(), target, minutes, way.tasks());
            Now now = new Now(moved.done(), moved.at());
            Way known = next.get(now);
            if (known == null) {
                met.add(now);
            }
            if (known == null || moved.minutes() < known.minutes()) {
                next.put(now, moved);
            }
        }
    }

    /** Does all that can be done where one stands. */
    private Way settle(BitSet before, Place at, double minutes, List<Integer> sofar) {
        BitSet done = (BitSet) before.clone();
        List<Integer> tasks = new ArrayList<>(sofar);
        boolean more = true;
        while (more) {
            more = false;
            for (int task = done.nextClearBit(0); task < work.count(); task = done.nextClearBit(task + 1)) {
                if (work.place(task).from(at).equals(at) && work.ready(task, done)) {
                    done.set(task);
                    tasks.add(task);
                    more = true;
                }
            }
        }
        return new Way(done, at, minutes, minutes + rest(done, at), tasks);
    }

    /** Least minutes that must follow: every other zone that is still needed is gone to once, every other side lain on once. */
    private double rest(BitSet done, Place at) {
        BitSet zones = new BitSet();
        boolean turns = false;
        boolean here = false;
        for (int task = done.nextClearBit(0); task < work.count(); task = done.nextClearBit(task + 1)) {
            Place place = work.place(task);
            if (place.zone() >= 0) {
                zones.set(place.zone());
            }
            boolean other = place.side() != Side.EITHER && place.side() != at.side();
            turns |= other;
            here |= place.zone() == at.zone() && !other;
        }
        int walks = zones.cardinality() - (at.zone() >= 0 && zones.get(at.zone()) && !here ? 1 : 0);
        return walks * moving.walk() + (turns ? moving.turn() : 0);
    }
}
