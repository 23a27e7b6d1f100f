package ringout.sheet;

import java.util.OptionalDouble;

/**
 * What takes power from a rail: a load, or a regulator with all that hangs on it.
 *
 * @param name the unit, and its rail when it has several
 * @param regulator whether it feeds a rail of its own
 * @param shared whether another source feeds it as well
 * @param volts across it in V, all loads at their average; 0 when none reaches it
 * @param averageA what it takes in A, all loads at their average
 * @param peakA the same, all loads at their peak at once; empty when they cannot be carried
 */
public record Taker(
        String name, boolean regulator, boolean shared, double volts, double averageA, OptionalDouble peakA) {}
