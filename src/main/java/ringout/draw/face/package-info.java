/**
 * Faces of plugs: contacts in their places with the mark of pin 1 and the letters of their wires, seen from the wire side
 * or on the mating face, which is its mirror image.
 */
@NullMarked
package ringout.draw.face;

import org.jspecify.annotations.NullMarked;
