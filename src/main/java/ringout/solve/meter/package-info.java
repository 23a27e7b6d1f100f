/**
 * What a meter should read between two points, how far the reading may be off, which way its current takes, and what every
 * other reading would mean. All of it comes from one network: a fault is a change of that network, and the network is
 * solved again.
 */
@NullMarked
package ringout.solve.meter;

import org.jspecify.annotations.NullMarked;
