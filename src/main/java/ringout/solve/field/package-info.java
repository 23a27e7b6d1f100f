/** Magnetic fields of currents that flow in closed loops, and what they do to a compass. */
@NullMarked
package ringout.solve.field;

import org.jspecify.annotations.NullMarked;
