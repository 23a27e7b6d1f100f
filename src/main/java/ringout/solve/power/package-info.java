/**
 * What flows in an aircraft: the operating point of one declared state under one case of loads, from packs through
 * conductors, contacts and regulators to every load. Built on the plain circuits of {@link ringout.solve.dc}.
 */
@NullMarked
package ringout.solve.power;

import org.jspecify.annotations.NullMarked;
