/** Where a thing stands in the user's file, and what was wrong there. Sees nothing else of the program. */
@NullMarked
package ringout.text;

import org.jspecify.annotations.NullMarked;
