/** What reading a list could not settle by itself: what must be asked, what was taken as usual, and the answers. */
@NullMarked
package ringout.read.intake;

import org.jspecify.annotations.NullMarked;
