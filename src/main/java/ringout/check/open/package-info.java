/** Data that nobody gave, and between which ends each of them usually lies. */
@NullMarked
package ringout.check.open;

import org.jspecify.annotations.NullMarked;
