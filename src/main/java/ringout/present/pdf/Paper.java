package ringout.present.pdf;

/** Sizes of paper (ISO 216), in mm. */
public enum Paper {
    /** 210 by 297. */
    A4(210, 297),
    /** 297 by 420. */
    A3(297, 420);

    private final double narrow;
    private final double wide;

    Paper(double narrow, double wide) {
        this.narrow = narrow;
        this.wide = wide;
    }

    /** {@return the shorter side in mm} */
    public double narrow() {
        return narrow;
    }

    /** {@return the longer side in mm} */
    public double wide() {
        return wide;
    }
}
