/** Signals: which pins drive and which listen on a net, and the way from a controller's output to a motor at a bearing. */
@NullMarked
package ringout.graph.signal;

import org.jspecify.annotations.NullMarked;
