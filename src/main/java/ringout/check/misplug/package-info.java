/** The ways plugs can be put where they do not belong: which fit, which reach, and what comes of it. */
@NullMarked
package ringout.check.misplug;

import org.jspecify.annotations.NullMarked;
