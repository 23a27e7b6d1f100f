/** Checks of supplies and returns (codes P). */
@NullMarked
package ringout.check.power;

import org.jspecify.annotations.NullMarked;
