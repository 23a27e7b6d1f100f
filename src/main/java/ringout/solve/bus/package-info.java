/** Time on a bus: how long a frame takes, and how late a message can come when everything is sent at once. */
@NullMarked
package ringout.solve.bus;

import org.jspecify.annotations.NullMarked;
