/**
 * Who feeds whom: packs, regulators and outputs as two-terminal sources, the parts between them, and the voltage at rest of
 * every supply net against its own reference. A series link adds packs, a board only passes a rail, a combiner of diodes is
 * not a parallel connection.
 */
@NullMarked
package ringout.graph.power;

import org.jspecify.annotations.NullMarked;
