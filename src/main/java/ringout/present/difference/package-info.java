/** Differences of aircraft and tables of a fleet as text, JSON and comma-separated values. */
@NullMarked
package ringout.present.difference;

import org.jspecify.annotations.NullMarked;
