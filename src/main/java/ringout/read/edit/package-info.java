/** Lists of edits as text, one a line. */
@NullMarked
package ringout.read.edit;

import org.jspecify.annotations.NullMarked;
