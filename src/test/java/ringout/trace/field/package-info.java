/** The faults and tests of an aircraft as a problem of diagnosis. */
@NullMarked
package ringout.trace.field;

import org.jspecify.annotations.NullMarked;
