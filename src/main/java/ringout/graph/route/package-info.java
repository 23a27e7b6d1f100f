/** The ways leads take through the airframe: points, lengths, and how long two of them run side by side. */
@NullMarked
package ringout.graph.route;

import org.jspecify.annotations.NullMarked;
