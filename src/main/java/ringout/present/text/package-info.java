/** Reports as text for a terminal and as one line each for editors and search. */
@NullMarked
package ringout.present.text;

import org.jspecify.annotations.NullMarked;
