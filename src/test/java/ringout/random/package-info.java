/** Random valid aircraft, faults put into them, rows out of order, and data taken away. */
@NullMarked
package ringout.random;

import org.jspecify.annotations.NullMarked;
