/** Where the bytes of an aircraft come from: a folder on disk, or named bytes in memory. */
@NullMarked
package ringout.read.source;

import org.jspecify.annotations.NullMarked;
