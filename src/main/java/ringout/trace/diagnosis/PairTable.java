package ringout.trace.diagnosis;

/** What two faults at once would show; one may mask the other, so it cannot be computed from the rows of the two alone. */
@FunctionalInterface
public interface PairTable {
    /**
     * Chances of the outcomes of a question when both faults are present.
     *
     * @param question number of the question
     * @param one number of a suspect
     * @param other number of another
     * @return chances summing to 1
     */
    double[] row(int question, int one, int other);

    /**
     * How much likelier the two are together than by chance, for a cause they share (water, a crash, one lead); 1 when independent.
     */
    default double together(int one, int other) {
        return 1;
    }
}
