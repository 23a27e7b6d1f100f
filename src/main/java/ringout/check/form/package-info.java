/** The form every check keeps: what it is told, what it may say, and the limits it holds things against. */
@NullMarked
package ringout.check.form;

import org.jspecify.annotations.NullMarked;
