/** The sheet for finding a fault: what is seen, what may be wrong, and a tree of tests to follow with a pen. */
@NullMarked
package ringout.sheet.fault;

import org.jspecify.annotations.NullMarked;
