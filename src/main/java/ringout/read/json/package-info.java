/** The exchange and archive form: JSON, read as a stream. */
@NullMarked
package ringout.read.json;

import org.jspecify.annotations.NullMarked;
