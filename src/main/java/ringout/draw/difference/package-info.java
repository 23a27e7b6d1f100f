/** What a difference drawing is made from: the aircraft as it is now together with what only its base has. */
@NullMarked
package ringout.draw.difference;

import org.jspecify.annotations.NullMarked;
