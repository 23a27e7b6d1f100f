/** Checks of build order and energising (codes B). */
@NullMarked
package ringout.check.build;

import org.jspecify.annotations.NullMarked;
