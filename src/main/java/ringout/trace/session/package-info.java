/** The search for one fault on one aircraft: what is seen and read, what may be wrong, what to do next. */
@NullMarked
package ringout.trace.session;

import org.jspecify.annotations.NullMarked;
