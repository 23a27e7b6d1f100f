package ringout.draw.place;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import ringout.draw.form.Forms;
import ringout.draw.form.GroupForm;
import ringout.draw.form.Lattice;
import ringout.draw.form.Link;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;

/**
 * First choice of columns and sides: few passes, few brackets between boxes of one column, columns no higher than the
 * room. Boxes are set one after the other, nearest to the best connected one first, then moved and exchanged while that
 * helps.
 */
final class ColumnSearch {
    private static final double PASS = 4;
    private static final double BRACKET = 1.2;
    private static final double OUTER = 0.4;
    private static final double INNER_FLAG = 0.8;
    private static final double STEP_TOO_HIGH = 2;
    private static final double STEP_OF_HIGHEST = 0.1;
    private static final int SIDE_ROUNDS = 2;
    private static final int MOST_ROUNDS = 20;

    private final Forms forms;
    private final Arrangement state;
    private final Room room;
    private final boolean[] placed;
    private final boolean[] fixed;
    private final List<List<GroupForm>> touched;

    private ColumnSearch(Arrangement state, Room room, boolean[] fixed) {
        this.forms = state.forms;
        this.state = state;
        this.room = room;
        this.fixed = fixed;
        this.placed = fixed.clone();
        this.touched = touchedByMoving();
    }

    /** Sets columns and sides of all nodes that are not fixed. */
    static void run(Arrangement state, Room room, boolean[] fixed, int root) {
        ColumnSearch search = new ColumnSearch(state, room, fixed);
        for (int node : search.byDistance(root)) {
            search.setFirst(node, node == root);
        }
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (!search.improve()) {
                return;
            }
        }
    }

    /** {@return nodes by their number of wires, most first} */
    static List<Integer> byDegree(Forms forms) {
        int[] degree = new int[forms.nodes().size()];
        for (Tap tap : forms.taps()) {
            degree[tap.node()] += forms.links().get(tap.link()).flagged() ? 0 : 1;
        }
        List<Integer> nodes = new ArrayList<>();
        forms.nodes().forEach(n -> nodes.add(n.index()));
        nodes.sort((a, b) -> Integer.compare(degree[b], degree[a]));
        return nodes;
    }

    private List<Integer> byDistance(int root) {
        List<Integer> found = new ArrayList<>();
        boolean[] seen = new boolean[forms.nodes().size()];
        Deque<Integer> next = new ArrayDeque<>();
        List<Integer> seeds = new ArrayList<>(List.of(root));
        seeds.addAll(byDegree(forms));
        for (int seed : seeds) {
            if (!seen[seed]) {
                seen[seed] = true;
                next.add(seed);
            }
            while (!next.isEmpty()) {
                int node = next.remove();
                found.add(node);
                for (int neighbour : neighbours(node)) {
                    if (!seen[neighbour]) {
                        seen[neighbour] = true;
                        next.add(neighbour);
                    }
                }
            }
        }
        return found;
    }

    private List<Integer> neighbours(int node) {
        List<Integer> others = new ArrayList<>();
        for (int group : forms.nodes().get(node).groups()) {
            for (int tap : forms.groups().get(group).taps()) {
                if (!forms.links().get(forms.taps().get(tap).link()).flagged()) {
                    others.add(forms.across(forms.taps().get(tap)).node());
                }
            }
        }
        return others;
    }

    private void setFirst(int node, boolean isRoot) {
        if (fixed[node]) {
            return;
        }
        placed[node] = true;
        if (isRoot) {
            state.column[node] = (state.columns - 1) / 2;
            chooseSides(touched.get(node));
            return;
        }
        moveToBest(node, Double.MAX_VALUE);
    }

    private boolean moveToBest(int node, double before) {
        int from = state.column[node];
        boolean[] sides = state.right.clone();
        int best = from;
        double bestCost = before;
        boolean[] bestSides = sides;
        for (int c = 0; c < state.columns; c++) {
            state.column[node] = c;
            System.arraycopy(sides, 0, state.right, 0, sides.length);
            chooseSides(touched.get(node));
            double cost = cost();
            if (cost < bestCost - 1e-9) {
                bestCost = cost;
                best = c;
                bestSides = state.right.clone();
            }
        }
        state.column[node] = best;
        System.arraycopy(bestSides, 0, state.right, 0, sides.length);
        return bestCost < before - 1e-9;
    }

    private boolean improve() {
        boolean better = false;
        for (NodeForm node : forms.nodes()) {
            if (!fixed[node.index()]) {
                better |= moveToBest(node.index(), cost());
            }
        }
        for (int a = 0; a < forms.nodes().size(); a++) {
            for (int b = a + 1; b < forms.nodes().size(); b++) {
                better |= !fixed[a] && !fixed[b] && exchange(a, b);
            }
        }
        return better;
    }

    private boolean exchange(int a, int b) {
        if (state.column[a] == state.column[b]) {
            return false;
        }
        double before = cost();
        boolean[] sides = state.right.clone();
        swapColumns(a, b);
        chooseSides(touched.get(a));
        chooseSides(touched.get(b));
        if (cost() < before - 1e-9) {
            return true;
        }
        swapColumns(a, b);
        System.arraycopy(sides, 0, state.right, 0, sides.length);
        return false;
    }

    private void swapColumns(int a, int b) {
        int kept = state.column[a];
        state.column[a] = state.column[b];
        state.column[b] = kept;
    }

    /** For each node its own plugs and those at the other ends of its wires: what a move of the node may turn round. */
    private List<List<GroupForm>> touchedByMoving() {
        List<List<GroupForm>> all = new ArrayList<>();
        for (NodeForm node : forms.nodes()) {
            Set<Integer> groups = new TreeSet<>(node.groups());
            for (int group : node.groups()) {
                for (int tap : forms.groups().get(group).taps()) {
                    if (!forms.links().get(forms.taps().get(tap).link()).flagged()) {
                        groups.add(forms.across(forms.taps().get(tap)).group());
                    }
                }
            }
            all.add(groups.stream().map(forms.groups()::get).toList());
        }
        return all;
    }

    private void chooseSides(List<GroupForm> groups) {
        for (int round = 0; round < SIDE_ROUNDS; round++) {
            for (GroupForm group : groups) {
                if (placed[group.node()] && !fixed[group.node()]) {
                    chooseSide(group);
                }
            }
        }
    }

    private void chooseSide(GroupForm group) {
        int g = group.index();
        state.right[g] = false;
        double left = costOfGroup(group) + 0.01 * rowsOn(group.node(), false);
        state.right[g] = true;
        double right = costOfGroup(group) + 0.01 * rowsOn(group.node(), true);
        state.right[g] = right < left;
    }

    private int rowsOn(int node, boolean rightSide) {
        int rows = 0;
        for (int group : forms.nodes().get(node).groups()) {
            rows += state.right[group] == rightSide ? forms.groups().get(group).height() : 0;
        }
        return rows;
    }

    private double costOfGroup(GroupForm group) {
        double cost = 0;
        for (int tap : group.taps()) {
            cost += costOfLink(forms.links().get(forms.taps().get(tap).link()));
        }
        return cost;
    }

    private double costOfLink(Link link) {
        Tap from = forms.taps().get(link.from());
        int start = state.channelOf(from);
        boolean outer = start == 0 || start == state.columns;
        if (link.flagged()) {
            return outer ? 0 : INNER_FLAG;
        }
        Tap to = forms.taps().get(link.to());
        if (!placed[to.node()] || !placed[from.node()]) {
            return 0;
        }
        int end = state.channelOf(to);
        if (start != end) {
            return PASS * Math.abs(start - end);
        }
        boolean bracket = state.column[from.node()] == state.column[to.node()];
        return bracket ? BRACKET + (outer ? OUTER : 0) : 0;
    }

    private double cost() {
        double cost = 0;
        for (Link link : forms.links()) {
            if (placed[forms.taps().get(link.from()).node()]) {
                cost += costOfLink(link);
            }
        }
        int[] height = new int[state.columns];
        for (NodeForm node : forms.nodes()) {
            if (placed[node.index()]) {
                int rows = Math.max(rowsOn(node.index(), false), rowsOn(node.index(), true));
                height[state.column[node.index()]] += node.head() + rows + 2 * Lattice.BOX_GAP;
            }
        }
        int highest = Arrays.stream(height).max().orElse(0);
        for (int h : height) {
            cost += STEP_TOO_HIGH * Math.max(0, h - room.height());
        }
        return cost + STEP_OF_HIGHEST * highest;
    }
}
