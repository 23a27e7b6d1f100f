/** JSON Schemas made from the model, so that file and program cannot say different things. */
@NullMarked
package ringout.present.schema;

import org.jspecify.annotations.NullMarked;
