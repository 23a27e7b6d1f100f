/** Several tails held against one base: one table of all, and readings that run towards their limit over the flight hours. */
@NullMarked
package ringout.compare.fleet;

import org.jspecify.annotations.NullMarked;
