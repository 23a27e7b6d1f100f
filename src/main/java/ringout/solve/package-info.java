/** Numbers from the typed graph: what a meter should read between two points. */
@NullMarked
package ringout.solve;

import org.jspecify.annotations.NullMarked;
