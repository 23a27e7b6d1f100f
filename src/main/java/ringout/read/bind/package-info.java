/** What all formats share: half-read records that can be merged, and the making of model records from them. */
@NullMarked
package ringout.read.bind;

import org.jspecify.annotations.NullMarked;
