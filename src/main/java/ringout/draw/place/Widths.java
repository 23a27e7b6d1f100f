package ringout.draw.place;

import java.util.List;
import ringout.draw.form.Forms;
import ringout.draw.form.GroupForm;
import ringout.draw.form.Lattice;
import ringout.draw.form.NodeForm;
import ringout.draw.form.Tap;

/** Widths across the sheet, mm: of each column, of the lanes left and right of each channel, and of its tracks. */
public final class Widths {
    private static final double BARE_CHANNEL = 8;

    /** Line to be seen between the labels of both ends of a straight wire. */
    private static final double BARE_LINE = 6;

    private final double[] columns;
    private final double[] leftLanes;
    private final double[] rightLanes;
    private final int[] tracks;

    private Widths(double[] columns, double[] leftLanes, double[] rightLanes, int[] tracks) {
        this.columns = columns;
        this.leftLanes = leftLanes;
        this.rightLanes = rightLanes;
        this.tracks = tracks.clone();
    }

    /** {@return the widths for an arrangement whose channels need so many tracks} */
    static Widths of(Arrangement state, int[] tracks) {
        Forms forms = state.forms;
        double[] columns = new double[state.columns];
        for (NodeForm node : forms.nodes()) {
            int c = state.column[node.index()];
            double plugs = widest(state.side(node.index(), false)) + widest(state.side(node.index(), true));
            columns[c] = Math.max(columns[c], Math.max(node.width(), plugs + Lattice.AISLE));
        }
        double[] leftLanes = new double[state.columns + 1];
        double[] rightLanes = new double[state.columns + 1];
        for (Tap tap : forms.taps()) {
            int channel = state.channelOf(tap);
            double[] lanes = state.right[tap.group()] ? leftLanes : rightLanes;
            lanes[channel] = Math.max(lanes[channel], tap.lane().width());
        }
        return new Widths(columns, leftLanes, rightLanes, tracks);
    }

    private static double widest(List<GroupForm> groups) {
        return groups.stream().mapToDouble(GroupForm::width).max().orElse(0);
    }

    /** {@return the width of a column} */
    public double column(int column) {
        return columns[column];
    }

    /** {@return the width of the lanes on the left edge of a channel} */
    public double leftLane(int channel) {
        return leftLanes[channel];
    }

    /** {@return the width of a channel} */
    public double channel(int channel) {
        boolean outer = channel == 0 || channel == columns.length;
        boolean facing = leftLanes[channel] > 0 && rightLanes[channel] > 0;
        double turns = tracks[channel] == 0 ? 0 : (tracks[channel] + 1) * Lattice.STEP;
        turns = facing ? Math.max(BARE_LINE, turns) : turns;
        double all = leftLanes[channel] + turns + rightLanes[channel];
        return outer ? all : Math.max(BARE_CHANNEL, all);
    }

    /** {@return the width of the whole diagram} */
    public double total() {
        double total = 0;
        for (double column : columns) {
            total += column;
        }
        for (int c = 0; c < tracks.length; c++) {
            total += channel(c);
        }
        return total;
    }
}
