/** Checks of addresses, rates, indices and port settings (codes A). */
@NullMarked
package ringout.check.address;

import org.jspecify.annotations.NullMarked;
