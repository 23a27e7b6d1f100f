package ringout.solve.field;

/**
 * A magnetic field in microtesla.
 *
 * @param xUt part along the nose
 * @param yUt part across
 * @param zUt part upright, which does not turn a compass of a level aircraft
 */
public record Field(double xUt, double yUt, double zUt) {
    /** No field. */
    public static final Field NONE = new Field(0, 0, 0);

    /** This field and another one together. */
    public Field plus(Field other) {
        return new Field(xUt + other.xUt, yUt + other.yUt, zUt + other.zUt);
    }

    /** The part in the plane of the compass when the aircraft is level, microtesla. */
    public double horizontal() {
        return Math.hypot(xUt, yUt);
    }

    /** How strong it is, microtesla. */
    public double amount() {
        return Math.hypot(horizontal(), zUt);
    }
}
