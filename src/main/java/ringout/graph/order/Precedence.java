package ringout.graph.order;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import ringout.graph.Circuit;

/**
 * Which act of building must come before which: a unit before its plugs, everything under a lid before the lid, a lid
 * before what it carries, tests after what they test, power after what it comes from, and whatever the steps say of each
 * other. The order of the steps itself is not in it, so that a plan can be held against it.
 */
public final class Precedence {
    private final List<Act> acts;
    private final List<Before> edges;
    private final List<List<Integer>> out = new ArrayList<>();
    private final Map<Integer, Integer> fits;
    private final Map<LeadEnd, Integer> makes;
    private final List<Integer> closes;
    private final List<List<Integer>> ofStep;

    private Precedence(PrecedenceBuilder built) {
        this.fits = Collections.unmodifiableMap(built.fits());
        this.makes = Collections.unmodifiableMap(built.makes());
        this.closes = built.closes();
        this.ofStep = built.ofStep().stream().map(List::copyOf).toList();
        this.acts = List.copyOf(built.acts());
        this.edges = List.copyOf(built.edges());
        acts.forEach(act -> out.add(new ArrayList<>(2)));
        for (int i = 0; i < edges.size(); i++) {
            out.get(edges.get(i).first()).add(i);
        }
    }

    /** The order among the acts of an aircraft; made once. */
    public static Precedence of(Circuit circuit) {
        return circuit.know(Precedence.class, one -> new Precedence(new PrecedenceBuilder(one)));
    }

    /** All acts. */
    public List<Act> acts() {
        return acts;
    }

    /** All that must come before something. */
    public List<Before> edges() {
        return edges;
    }

    /** The act that fits each unit, by the number of the unit, in the order of the units. */
    public Map<Integer, Integer> fits() {
        return fits;
    }

    /** The act that makes each end of each lead, in the order of the list. */
    public Map<LeadEnd, Integer> makes() {
        return makes;
    }

    /** The act that closes each lid, in the order of the lids. */
    public List<Integer> closes() {
        return closes;
    }

    /** The acts a step of the procedure does. */
    public List<Integer> ofStep(int step) {
        return ofStep.get(step);
    }

    /** Numbers of the edges that leave an act. */
    public List<Integer> after(int act) {
        return out.get(act);
    }

    /**
     * Acts that can never be done because each waits for another: one shortest ring for each set of acts that wait for each
     * other, as edges in their order. Linear in acts and edges, but for the rings themselves.
     */
    public List<List<Before>> rings() {
        boolean[] stuck = stuck();
        List<List<Before>> rings = new ArrayList<>();
        boolean[] told = new boolean[acts.size()];
        for (int act = 0; act < acts.size(); act++) {
            if (stuck[act] && !told[act]) {
                List<Before> ring = ring(act, stuck);
                ring.forEach(edge -> told[edge.first()] = true);
                if (!ring.isEmpty()) {
                    boolean[] from = reach(act, stuck, true);
                    boolean[] to = reach(act, stuck, false);
                    for (int other = 0; other < told.length; other++) {
                        told[other] |= from[other] && to[other];
                    }
                    rings.add(shortest(from, to, stuck));
                }
            }
        }
        return rings;
    }

    /** What is left when all that waits for nothing is taken away again and again, from both ends. */
    private boolean[] stuck() {
        boolean[] left = new boolean[acts.size()];
        java.util.Arrays.fill(left, true);
        peel(left, true);
        peel(left, false);
        return left;
    }

    private void peel(boolean[] left, boolean forward) {
        int[] waits = new int[acts.size()];
        List<List<Integer>> next = new ArrayList<>();
        acts.forEach(act -> next.add(new ArrayList<>(2)));
        for (Before edge : edges) {
            if (left[edge.first()] && left[edge.then()]) {
                waits[forward ? edge.then() : edge.first()]++;
                next.get(forward ? edge.first() : edge.then()).add(forward ? edge.then() : edge.first());
            }
        }
        Deque<Integer> free = new ArrayDeque<>();
        for (int act = 0; act < waits.length; act++) {
            if (left[act] && waits[act] == 0) {
                free.add(act);
            }
        }
        while (!free.isEmpty()) {
            int act = free.remove();
            left[act] = false;
            for (int other : next.get(act)) {
                if (--waits[other] == 0) {
                    free.add(other);
                }
            }
        }
    }

    private boolean[] reach(int start, boolean[] within, boolean forward) {
        boolean[] seen = new boolean[acts.size()];
        List<List<Integer>> next = new ArrayList<>();
        acts.forEach(act -> next.add(new ArrayList<>(2)));
        for (Before edge : edges) {
            next.get(forward ? edge.first() : edge.then()).add(forward ? edge.then() : edge.first());
        }
        Deque<Integer> open = new ArrayDeque<>(List.of(start));
        seen[start] = true;
        while (!open.isEmpty()) {
            for (int other : next.get(open.remove())) {
                if (within[other] && !seen[other]) {
                    seen[other] = true;
                    open.add(other);
                }
            }
        }
        return seen;
    }

    /** The shortest ring through any act that is reached from and reaches the same one. */
    private List<Before> shortest(boolean[] from, boolean[] to, boolean[] stuck) {
        List<Before> best = List.of();
        for (int act = 0; act < from.length; act++) {
            if (from[act] && to[act]) {
                List<Before> ring = ring(act, stuck);
                if (!ring.isEmpty() && (best.isEmpty() || ring.size() < best.size())) {
                    best = ring;
                }
            }
        }
        return best;
    }

    /** The shortest ring through an act, or nothing. */
    private List<Before> ring(int act, boolean[] within) {
        int[] cameBy = new int[acts.size()];
        java.util.Arrays.fill(cameBy, -1);
        Deque<Integer> open = new ArrayDeque<>(List.of(act));
        while (!open.isEmpty()) {
            int here = open.remove();
            for (int number : out.get(here)) {
                Before edge = edges.get(number);
                if (edge.then() == act) {
                    return way(act, here, number, cameBy);
                }
                if (within[edge.then()] && cameBy[edge.then()] < 0) {
                    cameBy[edge.then()] = number;
                    open.add(edge.then());
                }
            }
        }
        return List.of();
    }

    private List<Before> way(int start, int last, int closing, int[] cameBy) {
        List<Before> ring = new ArrayList<>(List.of(edges.get(closing)));
        for (int here = last; here != start; here = edges.get(cameBy[here]).first()) {
            ring.add(0, edges.get(cameBy[here]));
        }
        return ring;
    }
}
