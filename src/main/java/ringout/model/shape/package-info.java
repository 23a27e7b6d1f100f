/**
 * The shape of the model records, read from the records themselves: names, kinds and order of their fields. One source
 * for the readers, the writers, the schema and the editing of a list.
 */
@NullMarked
package ringout.model.shape;

import org.jspecify.annotations.NullMarked;
