/** JSON for other programs: findings by a contract, and the aircraft itself. */
@NullMarked
package ringout.present.json;

import org.jspecify.annotations.NullMarked;
