/** What a conductor carries: the wire table with its sources, and the factors for insulation, air and bundle. */
@NullMarked
package ringout.graph.wire;

import org.jspecify.annotations.NullMarked;
