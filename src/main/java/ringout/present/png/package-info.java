/** Verified sheets as PNG pictures, for mails and for looking at; paper is printed from the vector forms. */
@NullMarked
package ringout.present.png;

import org.jspecify.annotations.NullMarked;
