/**
 * The map of motors and control surfaces, to be read at arm's length: which is which, where it is, which way it turns and what
 * drives it.
 */
@NullMarked
package ringout.draw.map;

import org.jspecify.annotations.NullMarked;
