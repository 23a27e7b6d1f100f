/**
 * The plan of places and routes: the aircraft from above and from the side, nose up, to scale, every unit where its coordinates say
 * it is.
 */
@NullMarked
package ringout.draw.site;

import org.jspecify.annotations.NullMarked;
