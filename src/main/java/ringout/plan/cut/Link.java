package ringout.plan.cut;

/**
 * One task waits for another.
 *
 * @param first number of the task that comes first
 * @param then number of the task that waits for it
 * @param minutes what doing without this order costs; infinite when there is no doing without it
 */
public record Link(int first, int then, double minutes) {
    /** {@return whether there is a way to do without it} */
    public boolean removable() {
        return Double.isFinite(minutes);
    }
}
