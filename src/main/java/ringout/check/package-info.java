/** All checks, run over every declared state of an aircraft. */
@NullMarked
package ringout.check;

import org.jspecify.annotations.NullMarked;
