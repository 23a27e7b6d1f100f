/**
 * The channel between two columns of boxes: which wire turns before which, and on which track.
 *
 * <p>A net of a channel has two terminals, each on the left or the right edge at a height. A net whose terminals face each
 * other on one height runs straight; any other has one vertical piece, on a track. Two nets of different order cross a
 * different number of times, and may even lie on top of each other: where one net's left terminal and another's right
 * terminal have the same height, the first must turn first. All heights are lattice steps.
 */
@NullMarked
package ringout.draw.channel;

import org.jspecify.annotations.NullMarked;
