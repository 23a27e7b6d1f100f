/** The pack to hand over: every document of it as data, computed from the aircraft, its graph and its review. */
@NullMarked
package ringout.sheet.pack;

import org.jspecify.annotations.NullMarked;
