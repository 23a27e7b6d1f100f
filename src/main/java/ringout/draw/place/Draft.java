package ringout.draw.place;

/** A placing on the way to a good one; quickly made, and worth improving if it is not far too large. */
public final class Draft {
    private static final int TRIALS = 3000;

    private final Appraisal seen;
    private final Room room;
    private final boolean[] fixed;

    Draft(Appraisal seen, Room room, boolean[] fixed) {
        this.seen = seen;
        this.room = room;
        this.fixed = fixed.clone();
    }

    /** {@return how bad the picture is; smaller is better} */
    public double score() {
        return seen.score;
    }

    /** {@return by how much it exceeds the room in the worse direction; 1 or less if it fits} */
    public double excess() {
        return Math.max(seen.widths.total() / room.width(), (double) seen.height / room.height());
    }

    /** {@return the draft after every single move that gains has been made} */
    public Draft improved() {
        return new Draft(Improver.improve(seen, room, fixed, TRIALS), room, fixed);
    }

    /** {@return the draft after a longer search; at once if it fits and no two wires cross} */
    public Draft refined() {
        boolean perfect = seen.crossings == 0 && excess() <= 1;
        return perfect ? this : new Draft(Improver.refine(seen, room, fixed, TRIALS), room, fixed);
    }

    /** {@return the placing} */
    public Placed placed() {
        return new Placed(seen);
    }
}
