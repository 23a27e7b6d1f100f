package ringout.draw.place;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.Forms;
import ringout.draw.form.GroupForm;
import ringout.draw.form.Link;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;

/**
 * A state of the search: columns, sides and orders, without heights.
 *
 * <p>What stands in a column is a slot: a node has its own number, the pass of a link through a column the number given
 * by {@link #pass}.
 */
final class Arrangement {
    final Forms forms;
    final int columns;
    final int[] column;
    final boolean[] right;
    final List<List<Integer>> plugOrder;
    final List<List<Integer>> stacks;

    private Arrangement(
            Forms forms,
            int columns,
            int[] column,
            boolean[] right,
            List<List<Integer>> plugOrder,
            List<List<Integer>> stacks) {
        this.forms = forms;
        this.columns = columns;
        this.column = column;
        this.right = right;
        this.plugOrder = plugOrder;
        this.stacks = stacks;
    }

    /** Everything in the first column, every plug looking left, in the order of the scene. */
    static Arrangement start(Forms forms, int columns) {
        List<List<Integer>> plugs = new ArrayList<>();
        for (NodeForm node : forms.nodes()) {
            plugs.add(new ArrayList<>(node.groups()));
        }
        List<List<Integer>> stacks = new ArrayList<>();
        for (int c = 0; c < columns; c++) {
            stacks.add(new ArrayList<>());
        }
        return new Arrangement(
                forms,
                columns,
                new int[forms.nodes().size()],
                new boolean[forms.groups().size()],
                plugs,
                stacks);
    }

    Arrangement copy() {
        return new Arrangement(forms, columns, column.clone(), right.clone(), copyOf(plugOrder), copyOf(stacks));
    }

    private static List<List<Integer>> copyOf(List<List<Integer>> lists) {
        List<List<Integer>> copy = new ArrayList<>(lists.size());
        for (List<Integer> list : lists) {
            copy.add(new ArrayList<>(list));
        }
        return copy;
    }

    /** {@return the channel a tap opens into; channel c lies left of column c} */
    int channelOf(Tap tap) {
        return column[tap.node()] + (right[tap.group()] ? 1 : 0);
    }

    int pass(int link, int throughColumn) {
        return forms.nodes().size() + link * columns + throughColumn;
    }

    boolean isPass(int slot) {
        return slot >= forms.nodes().size();
    }

    int linkOfPass(int slot) {
        return (slot - forms.nodes().size()) / columns;
    }

    int slotBound() {
        return forms.nodes().size() + forms.links().size() * columns;
    }

    /** {@return the columns a link passes through, in the order from its first end to its last} */
    int[] passedColumns(Link link) {
        if (link.flagged()) {
            return new int[0];
        }
        int start = channelOf(forms.taps().get(link.from()));
        int end = channelOf(forms.taps().get(link.to()));
        int[] passed = new int[Math.abs(end - start)];
        for (int i = 0; i < passed.length; i++) {
            passed[i] = end > start ? start + i : start - 1 - i;
        }
        return passed;
    }

    /** {@return the plugs of a node on one side, from top to bottom} */
    List<GroupForm> side(int node, boolean rightSide) {
        List<GroupForm> shown = new ArrayList<>();
        for (int group : plugOrder.get(node)) {
            if (right[group] == rightSide) {
                shown.add(forms.groups().get(group));
            }
        }
        return shown;
    }
}
