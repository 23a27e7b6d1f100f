/** A technician who follows the advice on aircraft with one hidden fault, and what comes of it. */
@NullMarked
package ringout.trace.campaign;

import org.jspecify.annotations.NullMarked;
