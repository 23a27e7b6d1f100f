/**
 * Lead drawings: a made-up lead to scale from its datum, with the plugs, labels, sleeve and what it passes, the faces of
 * both plugs and the table of its conductors.
 */
@NullMarked
package ringout.draw.lead;

import org.jspecify.annotations.NullMarked;
