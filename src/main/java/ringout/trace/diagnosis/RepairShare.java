package ringout.trace.diagnosis;

/**
 * How likely a repair action is to be the right one.
 *
 * @param action what to do
 * @param share chance that it cures the fault, 0 to 1
 */
public record RepairShare(RepairAction action, double share) {}
