/**
 * What a check has to say: findings with evidence, things it cannot tell, and how they are ordered and folded into one
 * headline a mistake.
 */
@NullMarked
package ringout.finding;

import org.jspecify.annotations.NullMarked;
