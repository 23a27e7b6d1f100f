package ringout.draw.place;

/** A first placing, quickly made; worth improving if it is not far too large. */
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

    /** {@return the placing after improvement} */
    public Placed improved() {
        return new Placed(Improver.improve(seen, room, fixed, TRIALS));
    }
}
