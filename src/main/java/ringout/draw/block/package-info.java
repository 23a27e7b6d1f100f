/**
 * The block diagram: every unit once, zone by zone, every lead as one line, power from the packs at the foot upwards, a bus along
 * one height.
 */
@NullMarked
package ringout.draw.block;

import org.jspecify.annotations.NullMarked;
