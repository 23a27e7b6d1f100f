package ringout.sheet.page;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A net: all points that are electrically one.
 *
 * @param name the first of its pins
 * @param pins its pins that have a conductor, in the order of the units
 * @param way from one end of the net to the farthest other, in words
 * @param volts expected with the power on and the loads at rest, against the 0V of a unit on it; empty if it has no voltage
 * @param against the 0V pin meant
 */
public record PageNet(String name, List<String> pins, String way, OptionalDouble volts, String against) {}
