package ringout.draw.place;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringout.draw.form.Forms;
import ringout.draw.form.GroupForm;
import ringout.draw.form.Lattice;
import ringout.draw.form.NodeForm;

/** Heights of nodes and of everything in them, once sides and orders of plugs are known; steps from the node's top. */
final class Shape {
    final int[] nodeHeight;
    final int[] groupTop;
    final int[] tapLine;
    private final Forms forms;

    private Shape(Forms forms) {
        this.forms = forms;
        this.nodeHeight = new int[forms.nodes().size()];
        this.groupTop = new int[forms.groups().size()];
        this.tapLine = new int[forms.taps().size()];
    }

    static Shape of(Arrangement state) {
        Shape shape = new Shape(state.forms);
        for (NodeForm node : state.forms.nodes()) {
            List<GroupForm> left = state.side(node.index(), false);
            List<GroupForm> right = state.side(node.index(), true);
            shape.nodeHeight[node.index()] = node.isSplice()
                    ? shape.splice(left, right, node.head())
                    : Math.max(shape.stack(left, node.head()), shape.stack(right, node.head())) + Lattice.BOX_FOOT;
        }
        return shape;
    }

    /** Wires on the left and on the right never meet the bar on one height, so that no dot joins four lines. */
    private int splice(List<GroupForm> left, List<GroupForm> right, int from) {
        Set<Integer> used = new HashSet<>();
        int end = from;
        for (List<GroupForm> side : List.of(left, right)) {
            int top = from;
            for (GroupForm group : side) {
                int tap = group.taps().get(0);
                int offset = forms.taps().get(tap).offset();
                boolean alone = left.size() == 1 && right.size() == 1;
                while (!alone && used.contains(top + offset)) {
                    top++;
                }
                groupTop[group.index()] = top;
                tapLine[tap] = top + offset;
                used.add(tapLine[tap]);
                top += group.height();
                end = Math.max(end, top);
            }
        }
        return end;
    }

    private int stack(List<GroupForm> groups, int from) {
        int top = from;
        for (GroupForm group : groups) {
            groupTop[group.index()] = top;
            for (int tap : group.taps()) {
                tapLine[tap] = top + forms.taps().get(tap).offset();
            }
            top += group.height() + Lattice.PLUG_GAP;
        }
        return groups.isEmpty() ? from : top - Lattice.PLUG_GAP;
    }
}
