/** Checks of procedure, records and completeness (codes X). */
@NullMarked
package ringout.check.record;

import org.jspecify.annotations.NullMarked;
