package ringout.draw.place;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringout.draw.form.Link;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;

/** First order of the slots in each column, and the upkeep of passes when columns or sides change. */
final class Stacking {
    private static final int SWEEPS = 8;

    private Stacking() {}

    /** Puts every node into its column in scene order, adds the passes, and sorts by where the wires pull. */
    static Appraisal start(Arrangement state, Room room, int[] heldRank) {
        state.stacks.forEach(List::clear);
        for (NodeForm node : state.forms.nodes()) {
            state.stacks.get(state.column[node.index()]).add(node.index());
        }
        state.stacks.forEach(stack -> stack.sort(Comparator.comparingInt(n -> heldRank[n])));
        refreshPasses(state, new int[state.slotBound()]);
        Appraisal best = Appraisal.of(state.copy(), room);
        Arrangement moving = state;
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            moving = sorted(moving, Appraisal.of(moving, room), heldRank);
            Appraisal now = Appraisal.of(moving.copy(), room);
            if (now.score < best.score) {
                best = now;
            }
        }
        return best;
    }

    private static Arrangement sorted(Arrangement state, Appraisal seen, int[] heldRank) {
        Arrangement next = state.copy();
        double[] wish = wishes(seen);
        for (List<Integer> stack : next.stacks) {
            List<Integer> held = new ArrayList<>(stack);
            held.removeIf(s -> next.isPass(s) || heldRank[s] == Integer.MAX_VALUE);
            stack.sort(Comparator.comparingDouble(s -> wish[s]));
            restoreHeld(stack, held);
        }
        for (NodeForm node : next.forms.nodes()) {
            if (heldRank[node.index()] == Integer.MAX_VALUE) {
                next.plugOrder.get(node.index()).sort(Comparator.comparingDouble(g -> plugWish(seen, g)));
            }
        }
        return next;
    }

    /** The held ones keep their order among themselves, in the places they now take. */
    private static void restoreHeld(List<Integer> stack, List<Integer> held) {
        int next = 0;
        for (int i = 0; i < stack.size(); i++) {
            if (held.contains(stack.get(i))) {
                stack.set(i, held.get(next++));
            }
        }
    }

    /** Mean height of the far ends, for nodes less the offset of the near ends. */
    private static double[] wishes(Appraisal seen) {
        Arrangement state = seen.state;
        double[] sum = new double[state.slotBound()];
        int[] count = new int[state.slotBound()];
        for (Link link : state.forms.links()) {
            if (!link.flagged()) {
                Tap from = state.forms.taps().get(link.from());
                Tap to = state.forms.taps().get(link.to());
                int a = seen.level[from.node()] + seen.shape.tapLine[from.index()];
                int b = seen.level[to.node()] + seen.shape.tapLine[to.index()];
                add(sum, count, from.node(), b - seen.shape.tapLine[from.index()]);
                add(sum, count, to.node(), a - seen.shape.tapLine[to.index()]);
                for (int column : state.passedColumns(link)) {
                    add(sum, count, state.pass(link.index(), column), (a + b) / 2.0);
                }
            }
        }
        for (int s = 0; s < sum.length; s++) {
            sum[s] = count[s] == 0 ? seen.level[s] : sum[s] / count[s];
        }
        return sum;
    }

    private static void add(double[] sum, int[] count, int slot, double wish) {
        sum[slot] += wish;
        count[slot]++;
    }

    private static double plugWish(Appraisal seen, int group) {
        Arrangement state = seen.state;
        double sum = 0;
        int count = 0;
        for (int index : state.forms.groups().get(group).taps()) {
            Tap tap = state.forms.taps().get(index);
            if (!state.forms.links().get(tap.link()).flagged()) {
                Tap far = state.forms.across(tap);
                sum += seen.level[far.node()] + seen.shape.tapLine[far.index()];
                count++;
            }
        }
        int node = state.forms.groups().get(group).node();
        return count == 0 ? seen.level[node] + seen.shape.groupTop[group] : sum / count;
    }

    /** Removes passes that are no longer needed and puts new ones near the middle between their ends. */
    static void refreshPasses(Arrangement state, int[] level) {
        Set<Integer> needed = new HashSet<>();
        List<int[]> wanted = new ArrayList<>();
        for (Link link : state.forms.links()) {
            for (int column : state.passedColumns(link)) {
                int slot = state.pass(link.index(), column);
                needed.add(slot);
                int from = level[state.forms.taps().get(link.from()).node()];
                int to = level[state.forms.taps().get(link.to()).node()];
                wanted.add(new int[] {column, slot, (from + to) / 2});
            }
        }
        state.stacks.forEach(stack -> stack.removeIf(s -> state.isPass(s) && !needed.contains(s)));
        for (int[] pass : wanted) {
            List<Integer> stack = state.stacks.get(pass[0]);
            if (!stack.contains(pass[1])) {
                int place = 0;
                while (place < stack.size() && level[stack.get(place)] <= pass[2]) {
                    place++;
                }
                stack.add(place, pass[1]);
            }
        }
    }
}
