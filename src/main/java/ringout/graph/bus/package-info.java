/**
 * Buses as trees of pair links: members joined by leads, a pair link only where both conductors are intact; single-leg
 * links are kept apart. Trunk, stubs, rings, terminators at their places.
 */
@NullMarked
package ringout.graph.bus;

import org.jspecify.annotations.NullMarked;
