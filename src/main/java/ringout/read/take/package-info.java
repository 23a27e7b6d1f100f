/** Takes back what was written on pages: ticks, readings, signatures, photos, notes. Nothing is lost, nothing is chosen. */
@NullMarked
package ringout.read.take;

import org.jspecify.annotations.NullMarked;
