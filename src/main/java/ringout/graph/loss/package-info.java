/** What stops when one thing lets go: supply, return and signal ways by dominators, and the loss table. */
@NullMarked
package ringout.graph.loss;

import org.jspecify.annotations.NullMarked;
