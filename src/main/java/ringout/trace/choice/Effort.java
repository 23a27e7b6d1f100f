package ringout.trace.choice;

/**
 * How hard to look ahead.
 *
 * @param level 0 takes the most information per minute; 1 tries each of the best tests and goes on by level 0; 2 goes on by level 1
 * @param tests how many of the best tests are tried at a step
 * @param known how many tests are known to the steps ahead
 * @param mass the likeliest suspects that hold this share are looked at ahead, the rest is left out
 * @param most at most so many suspects are looked at ahead
 * @param deep with no more suspects and tests than this in sight, one level more
 * @param floor a branch less likely than this is estimated by its uncertainty instead of being followed
 */
public record Effort(int level, int tests, int known, double mass, int most, int deep, double floor) {
    private static final double USUAL_SIZE = 1000;

    /** For an aircraft: a dozen tests, suspects of 99.5 % of the mass. */
    public static final Effort FIELD = new Effort(1, 12, 24, 0.995, 100, 10, 0.004);

    /** Everything followed, nothing left out: for problems of some tens of suspects. Never worse than level 0 of itself. */
    public static final Effort FULL = new Effort(1, Integer.MAX_VALUE, Integer.MAX_VALUE, 1, Integer.MAX_VALUE, 0, 0);

    /** Refuses an effort that looks at nothing. */
    public Effort {
        if (level < 0 || tests < 1 || known < 1 || most < 1 || !(mass > 0 && mass <= 1) || !(floor >= 0)) {
            throw new IllegalArgumentException("an effort needs a level, tests, suspects and a share above 0");
        }
    }

    /**
     * The effort for so many suspects and tests: where few are in sight, all of them one level deeper; where many, branches estimated sooner, so
     * that the time stays about the same.
     */
    Effort in(int suspects, int options) {
        if (suspects <= deep && options <= deep) {
            return new Effort(level + 1, tests, known, 1, most, deep, floor / 20);
        }
        double size = (double) Math.min(suspects, most) * Math.min(options, known) / USUAL_SIZE;
        return new Effort(level, tests, known, mass, most, deep, floor * Math.max(1, size));
    }

    /** Share below which a suspect is dropped while looking ahead; practically none where everything is followed. */
    double gone() {
        return Math.max(1e-7, floor / 4);
    }

    /** The same at another level. */
    public Effort at(int other) {
        return new Effort(other, tests, known, mass, most, deep, floor);
    }
}
