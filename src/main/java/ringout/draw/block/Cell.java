package ringout.draw.block;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringout.draw.block.BlockScene.BlockUnit;
import ringout.draw.spacing.Isotonic;

/** A unit in its row while places are sought; all lengths are lattice steps. */
final class Cell {
    final BlockUnit unit;
    final List<Port> top = new ArrayList<>();
    final List<Port> bottom = new ArrayList<>();
    int width;
    int left;

    /** The end of a lead at a unit. */
    static final class Port {
        final int lead;
        final Cell cell;
        int x;

        Port(int lead, Cell cell) {
            this.lead = lead;
            this.cell = cell;
        }
    }

    Cell(BlockUnit unit) {
        this.unit = unit;
    }

    /** As wide as its words and its ends need. */
    void widen(int words) {
        width = Math.max(words, 2 * Math.max(top.size(), bottom.size()));
    }

    int right() {
        return left + width;
    }

    /** Sets the ends of one side in the order of what they face, each as near to it as can be. */
    void settle(List<Port> side, Facing facing) {
        if (side.isEmpty()) {
            return;
        }
        side.sort(Comparator.comparingInt((Port port) -> facing.of(port)).thenComparingInt(port -> port.lead));
        int[] distance = new int[side.size()];
        for (int i = 1; i < distance.length; i++) {
            distance[i] = distance[i - 1] + 2;
        }
        Isotonic row = new Isotonic(distance);
        for (int i = 0; i < distance.length; i++) {
            row.wish(i, facing.of(side.get(i)), 1);
        }
        int[] found = row.solve(left + 1, right() - 1);
        for (int i = 0; i < found.length; i++) {
            side.get(i).x = found[i];
        }
    }

    /** Where what an end faces stands. */
    interface Facing {
        int of(Port port);
    }
}
