package ringout.plan.task;

import ringout.graph.order.StepKind;
import ringout.plan.order.Side;

/**
 * Something to be done.
 *
 * @param kind what is done
 * @param what to what, in words
 * @param zone where; empty when it is done anywhere
 * @param side how the aircraft must lie
 * @param step id of the step of the written procedure that does it; empty when none does
 * @param turn place of that step in the procedure; {@link #UNWRITTEN} when none does
 */
public record Task(StepKind kind, String what, String zone, Side side, String step, int turn) {
    /** Turn of a task no step does. */
    public static final int UNWRITTEN = Integer.MAX_VALUE;

    /** {@return the task in words: {@code make W11 at PDB-K1P}} */
    public String words() {
        return kind == StepKind.OTHER ? what : kind.word() + " " + what;
    }

    /** {@return whether a step of the written procedure does it} */
    public boolean written() {
        return turn != UNWRITTEN;
    }
}
