/** What wires are rated for: the two rule sets, the tables they rest on, and the choice of a size. */
@NullMarked
package ringout.solve.rating;

import org.jspecify.annotations.NullMarked;
