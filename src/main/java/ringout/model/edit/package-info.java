/** Typed changes of an aircraft: what if, repairs and seeded mistakes are the same thing, applied to an immutable model. */
@NullMarked
package ringout.model.edit;

import org.jspecify.annotations.NullMarked;
