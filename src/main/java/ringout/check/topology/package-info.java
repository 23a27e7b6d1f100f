/** Checks of what is joined to what: orphans, loose ends, buses, terminators, rings, pairs (codes T). */
@NullMarked
package ringout.check.topology;

import org.jspecify.annotations.NullMarked;
