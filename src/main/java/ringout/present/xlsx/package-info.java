/** Tables as a workbook. The library behind it is loaded only by a command that writes one. */
@NullMarked
package ringout.present.xlsx;

import org.jspecify.annotations.NullMarked;
