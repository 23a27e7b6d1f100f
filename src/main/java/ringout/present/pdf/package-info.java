/**
 * Documents and drawings as PDF. The formatter behind it is large: nothing outside this package names it, so that a command
 * that writes no PDF does not load it.
 */
@NullMarked
package ringout.present.pdf;

import org.jspecify.annotations.NullMarked;
