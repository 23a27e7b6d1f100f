package ringout.solve.field;

/** How far a disturbing field turns a compass. */
public final class HeadingError {
    private static final double HALF_TURN = 180;

    private HeadingError() {}

    /**
     * The largest error over all headings, degrees.
     *
     * @param levelUt level part of the disturbing field, microtesla
     * @param earthUt level part of the field of the Earth, microtesla
     * @return asin of their ratio; half a turn when the disturbance is as strong as the Earth's field or stronger
     */
    public static double degrees(double levelUt, double earthUt) {
        return levelUt >= earthUt ? HALF_TURN : Math.toDegrees(Math.asin(levelUt / earthUt));
    }
}
