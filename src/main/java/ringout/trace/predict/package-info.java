/** What each candidate fault would make every test show, computed from the graph and the operating point. */
@NullMarked
package ringout.trace.predict;

import org.jspecify.annotations.NullMarked;
