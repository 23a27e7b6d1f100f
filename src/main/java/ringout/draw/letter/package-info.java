/**
 * Lettering: how wide a text is on paper, known from the bundled font's own advance widths and so the same on every
 * machine. The size of lettering is the height of a capital letter in millimetres, as ISO 3098 counts it (from memory),
 * not the size that type foundries count.
 */
@NullMarked
package ringout.draw.letter;

import org.jspecify.annotations.NullMarked;
