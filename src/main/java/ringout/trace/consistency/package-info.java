/** Diagnosis by consistency: which sets of faults agree with what was seen, when parts only say what they do while they are sound. */
@NullMarked
package ringout.trace.consistency;

import org.jspecify.annotations.NullMarked;
