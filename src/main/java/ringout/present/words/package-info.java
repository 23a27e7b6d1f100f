/** Words and figures that several forms of output share: readings, faults, cautions. */
@NullMarked
package ringout.present.words;

import org.jspecify.annotations.NullMarked;
