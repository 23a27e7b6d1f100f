/** The order of work within a stage that saves walking round the aircraft and turning it over. */
@NullMarked
package ringout.plan.order;

import org.jspecify.annotations.NullMarked;
