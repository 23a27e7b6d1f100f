/**
 * Bus diagrams, from the scene to the styled sheet: a straight trunk to scale of its length, members in order, stubs
 * hanging to scale, every terminator at the place where it is or ought to be.
 *
 * <pre>
 * BusDrawing drawing = BusDrawing.of(scene, SheetSize.workshop());
 * if (drawing instanceof BusDrawing.Fits fits) {
 *     SvgOutcome outcome = SvgOutcome.of(fits.sheet());   // ringout.present.svg
 * }
 * </pre>
 *
 * <p>The scale is stated and drawn. Where two places are too near to be told apart, or a length is not known, the axis is
 * broken there, with a break mark, and the rest stays to scale.
 */
@NullMarked
package ringout.draw.bus;

import org.jspecify.annotations.NullMarked;
