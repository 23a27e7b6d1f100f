/**
 * How things look, the same on every kind of sheet: colours, pens, badges, frame, title block, legend, finding list.
 *
 * <p>Everything is told apart by form first: net kinds by the line, severities by the shape and the hatching. Colours are
 * of the blue, orange, black and grey family after Okabe and Ito (from memory), darkened where the contrast formula of
 * WCAG 2 asks for it, and a copy in black and white loses nothing.
 */
@NullMarked
package ringout.draw.style;

import org.jspecify.annotations.NullMarked;
