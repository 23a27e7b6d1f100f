/**
 * What flows in an aircraft: the operating point of one declared state under one case of loads, from packs through
 * conductors, contacts and regulators to every load. Built on the plain circuits of {@link ringout.solve.dc}.
 *
 * <pre>{@code
 * OperatingPoint point = OperatingPoint.of(circuit, LoadCase.AVERAGE.peaking(List.of("ESC1")).with(PackCharge.EMPTY));
 * if (point instanceof PowerFlow flow) {
 *     flow.volts(plusPin, zeroPin);  // V, empty where nothing is defined
 *     flow.amps(wire);               // A, from its from end to its to end
 *     flow.loads();                  // what every load gets
 * } else if (point instanceof OperatingPoint.Collapse collapse) {
 *     collapse.limiting();           // what gives way first, and at which part of the loads
 * }
 * }</pre>
 *
 * <p>Not in it: current limits of regulators (their ratings are for the checks), heating of conductors by their own
 * current, what signal pins draw, and cells other than as a voltage behind a resistance.
 */
@NullMarked
package ringout.solve.power;

import org.jspecify.annotations.NullMarked;
