package ringout.plan.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/** Tasks with their places, and which must come before which. Tasks earlier in the list are preferred where all else is equal. */
public final class Work {
    private final List<Place> places;
    private final List<BitSet> needs = new ArrayList<>();

    private Work(List<Place> places) {
        this.places = List.copyOf(places);
        places.forEach(place -> needs.add(new BitSet()));
    }

    /** {@return work with tasks at these places and nothing said of their order} */
    public static Work of(List<Place> places) {
        return new Work(places);
    }

    /** Says that a task must be done before another. */
    public Work before(int first, int then) {
        needs.get(then).set(first);
        return this;
    }

    /** {@return the number of tasks} */
    public int count() {
        return places.size();
    }

    /** {@return where a task is done} */
    public Place place(int task) {
        return places.get(task);
    }

    /** {@return whether a task may be done when these are done} */
    public boolean ready(int task, BitSet done) {
        BitSet wanted = needs.get(task);
        for (int need = wanted.nextSetBit(0); need >= 0; need = wanted.nextSetBit(need + 1)) {
            if (!done.get(need)) {
                return false;
            }
        }
        return true;
    }

    /** {@return the tasks as they come: always the first of the list that is ready} */
    public List<Integer> plain() {
        List<Integer> order = new ArrayList<>();
        BitSet done = new BitSet();
        boolean more = true;
        while (more) {
            more = false;
            for (int task = done.nextClearBit(0); task < count() && !more; task = done.nextClearBit(task + 1)) {
                if (ready(task, done)) {
                    done.set(task);
                    order.add(task);
                    more = true;
                }
            }
        }
        return order;
    }

    /** {@return the minutes of walking and turning of an order of all tasks, coming from a place} */
    public double minutes(List<Integer> order, Moving moving, Place from) {
        double sum = 0;
        Place at = from;
        for (int task : order) {
            Place next = place(task).from(at);
            sum += moving.minutes(at, next);
            at = next;
        }
        return sum;
    }

    /** {@return where one stands, and how the aircraft lies, after an order of tasks} */
    public Place end(List<Integer> order, Place from) {
        Place at = from;
        for (int task : order) {
            at = place(task).from(at);
        }
        return at;
    }
}
