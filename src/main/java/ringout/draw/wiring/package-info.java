/**
 * Pin-to-pin wiring diagrams, from the scene to the styled sheet.
 *
 * <pre>
 * WiringDrawing drawing = WiringDrawing.of(scene, SheetSize.workshop());
 * if (drawing instanceof WiringDrawing.Fits fits) {
 *     SvgOutcome outcome = SvgOutcome.of(fits.sheet());   // ringout.present.svg
 *     Map&lt;String, String&gt; zones = fits.zones();           // "FC-CAN1-2" to "B4", for references on other sheets
 *     List&lt;Spot&gt; spots = fits.routed().placed().spots(); // to hold the places in a later drawing
 * } else if (drawing instanceof WiringDrawing.DoesNotFit too) {
 *     // split the scene: it would need too.width() by too.height() mm beside frame and title block
 * }
 * </pre>
 *
 * <p>Nothing is ever scaled: lettering has its size on paper, or the drawing does not fit.
 */
@NullMarked
package ringout.draw.wiring;

import org.jspecify.annotations.NullMarked;
