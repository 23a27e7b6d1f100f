/** Sheets as data: what a table for the workshop says, before it is written in any form. */
@NullMarked
package ringout.sheet;

import org.jspecify.annotations.NullMarked;
