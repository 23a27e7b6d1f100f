/** What rotors can still carry when some of them stop. */
@NullMarked
package ringout.solve.rotor;

import org.jspecify.annotations.NullMarked;
