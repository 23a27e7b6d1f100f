/** Reads a folder or a file into one aircraft, whatever its formats. Never throws for bad input: it tells all of it at once. */
@NullMarked
package ringout.read;

import org.jspecify.annotations.NullMarked;
