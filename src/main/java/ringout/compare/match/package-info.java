/**
 * What of one aircraft is what of another: units, contacts and leads, by name where names agree and by the meaning of their
 * connections where they do not.
 */
@NullMarked
package ringout.compare.match;

import org.jspecify.annotations.NullMarked;
