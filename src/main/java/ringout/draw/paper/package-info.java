/**
 * Paper: points and areas in millimetres from the upper left corner of the sheet, sheet sizes, the frame, and the zone
 * letters and numbers by which a place on a sheet is named over the telephone.
 */
@NullMarked
package ringout.draw.paper;

import org.jspecify.annotations.NullMarked;
