/** The harness as it is made and proved: conductors by name, what each end is, and the nets they form by themselves. */
@NullMarked
package ringout.sheet.harness;

import org.jspecify.annotations.NullMarked;
