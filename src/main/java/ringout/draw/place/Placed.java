package ringout.draw.place;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.channel.Net;
import ringout.draw.form.Forms;
import ringout.draw.form.GroupForm;
import ringout.draw.form.Link;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;
import ringout.draw.scene.Spot;

/**
 * A scene whose every part has a column, a side and a height; only {@link Placer} makes one. Heights are lattice steps
 * from the top of the diagram; widths follow when the wires have been routed.
 */
public final class Placed {
    private final Appraisal seen;

    Placed(Appraisal seen) {
        this.seen = seen;
    }

    /** {@return the parts and their sizes} */
    public Forms forms() {
        return seen.state.forms;
    }

    /** {@return the number of columns} */
    public int columns() {
        return seen.state.columns;
    }

    /** {@return the column of a node, from 0 at the left} */
    public int column(NodeForm node) {
        return seen.state.column[node.index()];
    }

    /** {@return the top of a node} */
    public int top(NodeForm node) {
        return seen.level[node.index()] - seen.top;
    }

    /** {@return the height of a node} */
    public int height(NodeForm node) {
        return seen.shape.nodeHeight[node.index()];
    }

    /** {@return the height over all} */
    public int height() {
        return seen.height;
    }

    /** {@return the top of a plug} */
    public int top(GroupForm group) {
        return seen.level[group.node()] - seen.top + seen.shape.groupTop[group.index()];
    }

    /** {@return whether a plug is on the right side of its box} */
    public boolean right(GroupForm group) {
        return seen.state.right[group.index()];
    }

    /** {@return the height of the line at a wire end} */
    public int line(Tap tap) {
        return seen.level[tap.node()] - seen.top + seen.shape.tapLine[tap.index()];
    }

    /** {@return whether a wire end is on the right side} */
    public boolean right(Tap tap) {
        return seen.state.right[tap.group()];
    }

    /** {@return the columns a link passes through, from its first end to its last} */
    public List<Integer> passedColumns(Link link) {
        List<Integer> passed = new ArrayList<>();
        for (int column : seen.state.passedColumns(link)) {
            passed.add(column);
        }
        return passed;
    }

    /** {@return the nets of each channel; channel c lies left of column c} */
    public List<List<Net>> channels() {
        List<List<Net>> moved = new ArrayList<>();
        for (List<Net> nets : seen.channels) {
            moved.add(nets.stream()
                    .map(n -> new Net(n.link(), n.leftA(), n.a() - seen.top, n.leftB(), n.b() - seen.top))
                    .toList());
        }
        return moved;
    }

    /** {@return the widths, with as many tracks as the channels turned out to need} */
    public Widths widths(int[] tracks) {
        return Widths.of(seen.state, tracks);
    }

    /** {@return the width over all, mm, before any wire has turned a second time} */
    public double leastWidth() {
        return seen.widths.total();
    }

    /** {@return how bad the picture is; smaller is better, comparable for one scene and one room only} */
    public double score() {
        return seen.score;
    }

    /** {@return where every box and splice stands, to be held by a later drawing} */
    public List<Spot> spots() {
        List<Spot> spots = new ArrayList<>();
        for (NodeForm node : forms().nodes()) {
            int rank = seen.level[node.index()] - seen.top;
            spots.add(new Spot(node.id(), column(node), rank, idsOn(node, false), idsOn(node, true)));
        }
        return spots;
    }

    private List<String> idsOn(NodeForm node, boolean rightSide) {
        return seen.state.side(node.index(), rightSide).stream()
                .map(GroupForm::id)
                .toList();
    }
}
