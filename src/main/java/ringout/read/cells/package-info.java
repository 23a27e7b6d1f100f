/** The cells of a spreadsheet as their owner sees them, before anything is made of them: workbooks and text alike. */
@NullMarked
package ringout.read.cells;

import org.jspecify.annotations.NullMarked;
