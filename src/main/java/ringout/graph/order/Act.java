package ringout.graph.order;

/**
 * One act of building: a unit fitted, one end of a lead made, a lid closed.
 *
 * @param kind what is done
 * @param name to what, in words
 * @param step place of the step that does it in the procedure; -1 when none does
 */
public record Act(StepKind kind, String name, int step) {
    /** The act in words: {@code close top plate}. */
    public String words() {
        return kind.word() + " " + name;
    }
}
