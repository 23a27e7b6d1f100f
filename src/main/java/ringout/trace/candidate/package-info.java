/** What may be wrong with an aircraft, each fault at each place it can sit, with how likely it is before anything is known. */
@NullMarked
package ringout.trace.candidate;

import org.jspecify.annotations.NullMarked;
