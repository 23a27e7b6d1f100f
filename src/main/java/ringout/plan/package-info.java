/** The plan of the build: what is done in which stage, what is proved before each hold, and what a lid costs when one is late. */
@NullMarked
package ringout.plan;

import org.jspecify.annotations.NullMarked;
