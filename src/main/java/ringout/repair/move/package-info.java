/** Kinds of changes a repair may consist of, each as edits of the list with what they cost. */
@NullMarked
package ringout.repair.move;

import org.jspecify.annotations.NullMarked;
