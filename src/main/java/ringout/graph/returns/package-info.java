/** The 0V graph: whether a unit has a return, and whether it has enough of one. */
@NullMarked
package ringout.graph.returns;

import org.jspecify.annotations.NullMarked;
