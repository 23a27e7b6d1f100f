package ringout.synthetic;

/** Numbers as a person would write them. */
final class Numbers {
    private Numbers() {}

    /** Rounded to a thousandth. */
    static double round(double value) {
        return Math.rint(value * 1000) / 1000;
    }
}
