/** Things in a row that keep their order and distances, each as near as can be to where it wants to stand. */
@NullMarked
package ringout.draw.spacing;

import org.jspecify.annotations.NullMarked;
