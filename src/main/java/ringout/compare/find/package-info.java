/** Finds the differences of two aircraft: leads by the contacts they join, everything else field by field. */
@NullMarked
package ringout.compare.find;

import org.jspecify.annotations.NullMarked;
