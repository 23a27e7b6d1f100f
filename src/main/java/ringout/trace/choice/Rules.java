package ringout.trace.choice;

/**
 * When to stop and what to count as equal; all by common practice, no source, unless a project sets its own.
 *
 * @param stopShare one repair action covering more than this ends the search
 * @param likelyShare an action above this is likely enough to be done at once, when it costs no more than the cheapest useful test
 * @param usefulBits a test that tells no more than this is not worth asking
 * @param nearTie tests within this fraction of each other are equal, and the one that disturbs less is taken
 */
public record Rules(double stopShare, double likelyShare, double usefulBits, double nearTie) {
    /** The rules of the trade: 90 %, more likely than not, 0.03 bit, 15 %. */
    public static final Rules USUAL = new Rules(0.90, 0.50, 0.03, 0.15);

    /** Go on until one action is left for certain, whatever it costs; for comparison with exact plans. */
    public static final Rules TO_THE_END = new Rules(1 - 1e-9, 1, 1e-12, 0);

    /** Refuses shares outside 0 to 1. */
    public Rules {
        if (!(stopShare > 0 && stopShare <= 1 && likelyShare > 0 && likelyShare <= 1)) {
            throw new IllegalArgumentException("shares must be above 0 and at most 1");
        }
        if (!(usefulBits >= 0 && nearTie >= 0)) {
            throw new IllegalArgumentException("bits and the near tie must be 0 or more");
        }
    }
}
