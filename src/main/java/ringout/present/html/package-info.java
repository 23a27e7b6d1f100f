/** One file for the field: drawings, findings and readings, working without a network. */
@NullMarked
package ringout.present.html;

import org.jspecify.annotations.NullMarked;
