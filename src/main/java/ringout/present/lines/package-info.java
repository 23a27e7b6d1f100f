/** Differences of texts, line by line, as a person reads them. */
@NullMarked
package ringout.present.lines;

import org.jspecify.annotations.NullMarked;
