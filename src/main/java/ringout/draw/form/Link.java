package ringout.draw.form;

import java.util.Optional;
import ringout.draw.scene.Move;
import ringout.draw.scene.Wire;

/**
 * A wire or a move as the layout sees it.
 *
 * @param index its number
 * @param id identifier of the wire or move
 * @param wire the wire, if it is one
 * @param move the move, if it is one
 * @param from number of the tap it starts at
 * @param to number of the tap it ends at, or {@link #FLAGGED}
 */
public record Link(int index, String id, Optional<Wire> wire, Optional<Move> move, int from, int to) {
    /** Stands for the end of a wire that ends in a flag. */
    public static final int FLAGGED = -1;

    /** {@return whether it ends in a flag and needs no way across the sheet} */
    public boolean flagged() {
        return to == FLAGGED;
    }

    /** {@return the tap at the other end} */
    public int other(int tap) {
        return tap == from ? to : from;
    }
}
