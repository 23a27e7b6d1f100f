/** The sheets of a build: the plan, a sheet a stage, the last chances of each lid, and the first power-up. */
@NullMarked
package ringout.sheet.build;

import org.jspecify.annotations.NullMarked;
