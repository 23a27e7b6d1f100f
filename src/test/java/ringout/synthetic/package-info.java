/** Valid aircraft made from a seed, for property tests and for the benchmark. */
@NullMarked
package ringout.synthetic;

import org.jspecify.annotations.NullMarked;
