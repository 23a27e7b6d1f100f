/** Measures time and memory of the whole way from bytes to findings. Run by hand, never by the build. */
@NullMarked
package ringout.bench;

import org.jspecify.annotations.NullMarked;
