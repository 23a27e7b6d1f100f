/** Checks of redundancy and single points of failure: what falls when one thing lets go, and whether anybody would notice. */
@NullMarked
package ringout.check.redundancy;

import org.jspecify.annotations.NullMarked;
