package ringout.draw.place;

import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import ringout.draw.form.GroupForm;
import ringout.draw.form.NodeForm;

/**
 * Moves one thing at a time while the picture gains: a slot up or down its column, a plug up or down its side, a plug to
 * the other side, a node to another column. First improvement in a fixed order; ends when nothing helps or after a fixed
 * number of trials.
 */
final class Improver {
    private static final double GAIN = 1e-6;
    private static final int KICKED_NODES = 2;

    private final Room room;
    private final boolean[] fixed;
    private int trialsLeft;
    private Appraisal best;

    private Improver(Appraisal start, Room room, boolean[] fixed, int trials) {
        this.best = start;
        this.room = room;
        this.fixed = fixed;
        this.trialsLeft = trials;
    }

    /** {@return the best picture that single moves reach} */
    static Appraisal improve(Appraisal start, Room room, boolean[] fixed, int trials) {
        Improver improver = new Improver(start, room, fixed, trials);
        improver.descend();
        return improver.best;
    }

    /**
     * {@return the best of several such pictures, each begun from the best so far with a few nodes put elsewhere}
     * An iterated local search; the chance is seeded, and the same scene gives the same picture.
     */
    static Appraisal refine(Appraisal start, Room room, boolean[] fixed, int trials) {
        Improver improver = new Improver(start, room, fixed, trials);
        SplittableRandom chance = new SplittableRandom(1);
        Appraisal best = start;
        while (improver.trialsLeft > 0) {
            improver.best = improver.kicked(best, chance);
            improver.trialsLeft--;
            improver.descend();
            best = improver.best.score < best.score - GAIN ? improver.best : best;
        }
        return best;
    }

    private void descend() {
        boolean better = true;
        while (better && trialsLeft > 0) {
            better = moveSlots();
            better |= moveNodes();
            better |= movePlugs();
            better |= flipPlugs();
            better |= moveToOtherColumns();
        }
    }

    /** A few nodes put elsewhere by seeded chance, to leave a place from which no single move helps. */
    private Appraisal kicked(Appraisal from, SplittableRandom chance) {
        Arrangement state = from.state.copy();
        best = from;
        for (int i = 0; i < KICKED_NODES; i++) {
            int node = chance.nextInt(state.forms.nodes().size());
            if (!fixed[node]) {
                change(state, state.forms.nodes().get(node), chance.nextInt(state.columns));
            }
        }
        return Appraisal.of(state, room);
    }

    private boolean attempt(Consumer<Arrangement> change) {
        if (trialsLeft <= 0) {
            return false;
        }
        trialsLeft--;
        Arrangement next = best.state.copy();
        change.accept(next);
        Appraisal seen = Appraisal.of(next, room);
        if (seen.score < best.score - GAIN) {
            best = seen;
            return true;
        }
        return false;
    }

    private boolean isFixed(Arrangement state, int slot) {
        return !state.isPass(slot) && fixed[slot];
    }

    private boolean moveSlots() {
        boolean better = false;
        for (int c = 0; c < best.state.columns; c++) {
            for (int i = 0; i + 1 < best.state.stacks.get(c).size(); i++) {
                int column = c;
                int upper = i;
                List<Integer> stack = best.state.stacks.get(c);
                if (!(isFixed(best.state, stack.get(i)) && isFixed(best.state, stack.get(i + 1)))) {
                    better |= attempt(s -> Collections.swap(s.stacks.get(column), upper, upper + 1));
                }
            }
        }
        return better;
    }

    /** A node to any other place of its column: what a chain of exchanges, each no gain by itself, cannot reach. */
    private boolean moveNodes() {
        boolean better = false;
        for (int c = 0; c < best.state.columns; c++) {
            int size = best.state.stacks.get(c).size();
            for (int from = 0; from < size; from++) {
                for (int to = 0; to < size; to++) {
                    int column = c;
                    int a = from;
                    int b = to;
                    int slot = best.state.stacks.get(c).get(from);
                    if (Math.abs(from - to) > 1 && !best.state.isPass(slot) && !fixed[slot]) {
                        better |= attempt(s -> {
                            Integer moved = s.stacks.get(column).remove(a);
                            s.stacks.get(column).add(b, moved);
                        });
                    }
                }
            }
        }
        return better;
    }

    private boolean movePlugs() {
        boolean better = false;
        for (NodeForm node : best.state.forms.nodes()) {
            if (fixed[node.index()]) {
                continue;
            }
            for (boolean side : new boolean[] {false, true}) {
                for (int i = 0; i + 1 < best.state.side(node.index(), side).size(); i++) {
                    List<GroupForm> shown = best.state.side(node.index(), side);
                    int a = shown.get(i).index();
                    int b = shown.get(i + 1).index();
                    better |= attempt(s -> {
                        List<Integer> order = s.plugOrder.get(node.index());
                        Collections.swap(order, order.indexOf(a), order.indexOf(b));
                    });
                }
            }
        }
        return better;
    }

    private boolean flipPlugs() {
        boolean better = false;
        for (GroupForm group : best.state.forms.groups()) {
            if (!fixed[group.node()]) {
                better |= attempt(s -> {
                    s.right[group.index()] = !s.right[group.index()];
                    Stacking.refreshPasses(s, best.level);
                });
            }
        }
        return better;
    }

    private boolean moveToOtherColumns() {
        boolean better = false;
        for (NodeForm node : best.state.forms.nodes()) {
            for (int c = 0; c < best.state.columns; c++) {
                int column = c;
                if (!fixed[node.index()] && best.state.column[node.index()] != c) {
                    better |= attempt(s -> change(s, node, column));
                }
            }
        }
        return better;
    }

    private void change(Arrangement state, NodeForm node, int column) {
        int old = state.column[node.index()];
        state.stacks.get(old).remove(Integer.valueOf(node.index()));
        state.column[node.index()] = column;
        for (int group : node.groups()) {
            chooseSide(state, group);
        }
        List<Integer> stack = state.stacks.get(column);
        int place = 0;
        while (place < stack.size() && best.level[stack.get(place)] < best.level[node.index()]) {
            place++;
        }
        stack.add(place, node.index());
        Stacking.refreshPasses(state, best.level);
    }

    private static void chooseSide(Arrangement state, int group) {
        int pull = 0;
        for (int tap : state.forms.groups().get(group).taps()) {
            var from = state.forms.taps().get(tap);
            if (!state.forms.links().get(from.link()).flagged()) {
                pull += Integer.signum(state.column[state.forms.across(from).node()] - state.column[from.node()]);
            }
        }
        state.right[group] = pull > 0 || (pull == 0 && state.right[group]);
    }
}
