/**
 * The command line: wiring of the layers below, exit codes, and the only user of {@link java.lang.System}.
 *
 * <p>Everything a command does is a call on public types of the layers below.
 */
@NullMarked
package ringout.cli;

import org.jspecify.annotations.NullMarked;
