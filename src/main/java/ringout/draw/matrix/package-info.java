/**
 * Matrices: what lets go against what dies of it, plugs against the sockets they fit. A result is told by its shape and letter;
 * a matrix that is too large for a sheet goes on, with its heads, on the next.
 */
@NullMarked
package ringout.draw.matrix;

import org.jspecify.annotations.NullMarked;
