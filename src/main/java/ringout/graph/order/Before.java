package ringout.graph.order;

/**
 * One act must come before another.
 *
 * @param first number of the act that comes first
 * @param then number of the act that waits for it
 * @param why the reason in words
 * @param cut how to do without it, in words
 * @param minutes what doing without it costs; infinite when it cannot be done or nobody knows
 */
public record Before(int first, int then, String why, String cut, double minutes) {}
