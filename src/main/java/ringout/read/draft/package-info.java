/**
 * What a from-to list without units or types says of them all the same: which units there are, which plugs and pins they
 * have, what the names of trade make likely. Every guess is listed, and what the rows need and nobody said is asked.
 */
@NullMarked
package ringout.read.draft;

import org.jspecify.annotations.NullMarked;
