/** The tasks of a build, from the list and from the written procedure, and which must come before which. */
@NullMarked
package ringout.plan.task;

import org.jspecify.annotations.NullMarked;
