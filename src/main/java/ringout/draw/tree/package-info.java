/**
 * Trees from left to right: the power tree from the packs to the loads, and the return diagram from the pack minus to every
 * unit. A thing that feeds several has a bar on its right side, so that every line is straight and nothing crosses.
 */
@NullMarked
package ringout.draw.tree;

import org.jspecify.annotations.NullMarked;
