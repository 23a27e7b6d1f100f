/** The cheapest way out when tasks wait for each other in a ring. */
@NullMarked
package ringout.plan.cut;

import org.jspecify.annotations.NullMarked;
