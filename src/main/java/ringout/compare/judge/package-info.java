/**
 * What a difference means: the findings that come and go with it, how grave it is, what is usually decided, what must be tested
 * again, and which signatures lapse.
 */
@NullMarked
package ringout.compare.judge;

import org.jspecify.annotations.NullMarked;
