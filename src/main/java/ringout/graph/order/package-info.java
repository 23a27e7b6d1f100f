/**
 * The order in which an aircraft is put together: the steps of the procedure, what each lid hides, and which act must come
 * before which.
 */
@NullMarked
package ringout.graph.order;

import org.jspecify.annotations.NullMarked;
