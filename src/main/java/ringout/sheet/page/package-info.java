/**
 * What one page for the field shows beside the drawings: every conductor with its net, way and expected reading in each
 * state, and what every plug takes with it when it is pulled. All of it is worked out here; a page only looks it up.
 */
@NullMarked
package ringout.sheet.page;

import org.jspecify.annotations.NullMarked;
