/**
 * Repairs: the smallest change of the list that clears a finding, found by search, made on a copy and reviewed again.
 * {@code RepairSearch} is the way in; the changes it tries come from {@code ringout.repair.move}.
 */
@NullMarked
package ringout.repair;

import org.jspecify.annotations.NullMarked;
