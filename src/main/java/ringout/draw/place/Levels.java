package ringout.draw.place;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.form.Lattice;
import ringout.draw.place.Traffic.Piece;
import ringout.draw.place.Traffic.Terminal;
import ringout.draw.spacing.Isotonic;

/** Heights of all slots: columns in turn are set where their wires want them, until that settles. */
final class Levels {
    private static final int SWEEPS = 6;
    private static final int WIRE = 20;
    private static final int LONG_WIRE = 60;
    private static final int STAY = 1;

    private record Pull(int place, int otherSlot, int delta, int weight) {}

    private final Arrangement state;
    private final Shape shape;
    private final int[] level;
    private final int[] placeInColumn;
    private final List<List<Pull>> pulls = new ArrayList<>();
    private final List<int[]> distances = new ArrayList<>();

    private Levels(Arrangement state, Shape shape) {
        this.state = state;
        this.shape = shape;
        this.level = new int[state.slotBound()];
        this.placeInColumn = new int[state.slotBound()];
    }

    /** {@return the height of each slot, steps from the top of the diagram} */
    static int[] of(Arrangement state, Shape shape, Traffic traffic, int room) {
        Levels levels = new Levels(state, shape);
        levels.stackUp(room);
        levels.collectPulls(traffic);
        boolean moved = true;
        for (int sweep = 0; moved && sweep < SWEEPS; sweep++) {
            moved = false;
            for (int i = 0; i < state.columns; i++) {
                moved |= levels.settle(sweep % 2 == 0 ? i : state.columns - 1 - i, room);
            }
        }
        return levels.level;
    }

    private void stackUp(int room) {
        for (List<Integer> stack : state.stacks) {
            pulls.add(new ArrayList<>());
            int[] distance = new int[stack.size()];
            for (int i = 1; i < distance.length; i++) {
                distance[i] = distance[i - 1] + between(stack.get(i - 1), stack.get(i));
            }
            distances.add(distance);
            int height = stack.isEmpty() ? 0 : distance[distance.length - 1] + heightOf(stack.get(stack.size() - 1));
            int top = Math.max(0, (room - height) / 2);
            for (int i = 0; i < distance.length; i++) {
                level[stack.get(i)] = top + distance[i];
                placeInColumn[stack.get(i)] = i;
            }
        }
    }

    private int heightOf(int slot) {
        return state.isPass(slot) ? 0 : shape.nodeHeight[slot];
    }

    private int between(int upper, int lower) {
        if (state.isPass(upper)) {
            return state.isPass(lower) ? 1 : Lattice.PASS_GAP;
        }
        return heightOf(upper) + (state.isPass(lower) ? Lattice.PASS_GAP : Lattice.BOX_GAP);
    }

    private void collectPulls(Traffic traffic) {
        for (int channel = 0; channel < traffic.channels.size(); channel++) {
            for (Piece piece : traffic.channels.get(channel)) {
                if (piece.a().leftEdge() != piece.b().leftEdge()) {
                    addPull(channel, piece.a(), piece.b());
                    addPull(channel, piece.b(), piece.a());
                }
            }
        }
    }

    private void addPull(int channel, Terminal here, Terminal there) {
        boolean passes = state.isPass(here.slot()) && state.isPass(there.slot());
        int column = here.leftEdge() ? channel - 1 : channel;
        pulls.get(column)
                .add(new Pull(
                        placeInColumn[here.slot()],
                        there.slot(),
                        there.offset() - here.offset(),
                        passes ? LONG_WIRE : WIRE));
    }

    private boolean settle(int column, int room) {
        List<Integer> stack = state.stacks.get(column);
        if (stack.isEmpty()) {
            return false;
        }
        Isotonic order = new Isotonic(distances.get(column));
        for (int i = 0; i < stack.size(); i++) {
            order.wish(i, level[stack.get(i)], STAY);
        }
        for (Pull pull : pulls.get(column)) {
            order.wish(pull.place(), level[pull.otherSlot()] + pull.delta(), pull.weight());
        }
        int last = stack.get(stack.size() - 1);
        int[] heights = order.solve(0, room - heightOf(last));
        boolean moved = false;
        for (int i = 0; i < heights.length; i++) {
            moved |= level[stack.get(i)] != heights[i];
            level[stack.get(i)] = heights[i];
        }
        return moved;
    }
}
