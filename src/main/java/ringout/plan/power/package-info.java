/**
 * The first power-up: in stages, each with what is plugged, what a supply is set to, what a meter should then read, computed
 * for the circuit of that stage, and when to switch off; and the order in which pack plugs are made.
 */
@NullMarked
package ringout.plan.power;

import org.jspecify.annotations.NullMarked;
