/** The mark of an aircraft's data: a hash that paper and file can be matched by. */
@NullMarked
package ringout.model.seal;

import org.jspecify.annotations.NullMarked;
