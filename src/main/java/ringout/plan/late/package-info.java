/** What it costs to find a joint wrong after its lid is on. */
@NullMarked
package ringout.plan.late;

import org.jspecify.annotations.NullMarked;
