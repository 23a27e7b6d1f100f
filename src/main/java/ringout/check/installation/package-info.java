/** Checks of mechanical fit and installation (codes M). */
@NullMarked
package ringout.check.installation;

import org.jspecify.annotations.NullMarked;
