package ringout.plan.task;

/**
 * A place where work stops until somebody has signed.
 *
 * @param stage name of the stage that ends there
 * @param sign task of the signature
 * @param then task that may follow at once, a lid that is closed; -1 when none belongs to it
 */
public record HoldPoint(String stage, int sign, int then) {}
