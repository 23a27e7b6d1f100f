/**
 * What to do next: the test that gets soonest to the one repair action, or the honest stop. Expected information per minute ranks the
 * tests, a rollout with that ranking as base policy chooses among the best of them.
 */
@NullMarked
package ringout.trace.choice;

import org.jspecify.annotations.NullMarked;
