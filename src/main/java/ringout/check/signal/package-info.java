/** Checks of signals: drivers, levels, references, serial links, motor order and rotation (codes S). */
@NullMarked
package ringout.check.signal;

import org.jspecify.annotations.NullMarked;
