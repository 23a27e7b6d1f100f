/** Tables as text: comma separated, UTF-8, lines ending in \n (RFC 4180 but for the line end). */
@NullMarked
package ringout.present.csv;

import org.jspecify.annotations.NullMarked;
