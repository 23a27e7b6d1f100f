package ringout.draw.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.draw.form.Forms;
import ringout.draw.form.NodeForm;
import ringout.draw.scene.Spot;

/** Finds places for the parts of a scene. */
public final class Placer {
    private static final int ROOTS = 3;

    private Placer() {}

    /** {@return a first placing in so many columns, which may be larger than the room} */
    public static Draft draft(Forms forms, int columns, Room room) {
        Map<String, Spot> held = new HashMap<>();
        forms.scene().held().forEach(spot -> held.put(spot.id(), spot));
        boolean[] fixed = new boolean[forms.nodes().size()];
        int[] rank = new int[forms.nodes().size()];
        Arrays.fill(rank, Integer.MAX_VALUE);
        List<Integer> roots = ColumnSearch.byDegree(forms);
        if (roots.isEmpty()) {
            throw new IllegalArgumentException("a scene without boxes has nothing to place");
        }
        Appraisal best = first(forms, columns, room, held, fixed, rank, roots.get(0));
        for (int i = 1; i < Math.min(ROOTS, roots.size()); i++) {
            Appraisal seen = first(forms, columns, room, held, fixed, rank, roots.get(i));
            best = seen.score < best.score ? seen : best;
        }
        return new Draft(best, room, fixed);
    }

    private static Appraisal first(
            Forms forms, int columns, Room room, Map<String, Spot> held, boolean[] fixed, int[] rank, int root) {
        Arrangement state = Arrangement.start(forms, columns);
        hold(state, held, fixed, rank);
        ColumnSearch.run(state, room, fixed, root);
        return Stacking.start(state, room, rank);
    }

    /** {@return the best placing found in so many columns, which may still be larger than the room} */
    public static Placed place(Forms forms, int columns, Room room) {
        return draft(forms, columns, room).improved().refined().placed();
    }

    /** {@return a height below which no placing in so many columns can come, steps} */
    public static int leastHeight(Forms forms, int columns) {
        int all = 0;
        for (NodeForm node : forms.nodes()) {
            int rows = node.groups().stream()
                    .mapToInt(g -> forms.groups().get(g).height())
                    .sum();
            all += node.head() + rows / 2;
        }
        return all / columns;
    }

    /** {@return a width below which no placing with a wire in every channel can come, mm} */
    public static double leastWidth(Forms forms, int columns) {
        double narrowest = forms.nodes().stream()
                .filter(n -> !n.isSplice())
                .mapToDouble(NodeForm::width)
                .min()
                .orElse(0);
        double shortest = forms.taps().stream()
                .mapToDouble(tap -> tap.lane().width())
                .min()
                .orElse(0);
        return columns * narrowest + (columns - 1) * 2 * shortest;
    }

    private static void hold(Arrangement state, Map<String, Spot> held, boolean[] fixed, int[] rank) {
        for (NodeForm node : state.forms.nodes()) {
            Spot spot = held.get(node.id());
            if (spot != null && spot.column() < state.columns) {
                fixed[node.index()] = true;
                rank[node.index()] = spot.rank();
                state.column[node.index()] = spot.column();
                holdPlugs(state, node, spot);
            }
        }
    }

    /** Known plugs keep side and order; a new one comes last, on the left. */
    private static void holdPlugs(Arrangement state, NodeForm node, Spot spot) {
        List<String> order = new ArrayList<>(spot.left());
        order.addAll(spot.right());
        for (int group : node.groups()) {
            state.right[group] = spot.right().contains(idOf(state, group));
        }
        state.plugOrder.get(node.index()).sort(Comparator.comparingInt(group -> {
            int known = order.indexOf(idOf(state, group));
            return known < 0 ? Integer.MAX_VALUE : known;
        }));
    }

    private static String idOf(Arrangement state, int group) {
        return state.forms.groups().get(group).id();
    }
}
