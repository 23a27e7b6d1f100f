/**
 * From the aircraft to its wiring sheets: the list cut into sheets by system, each sheet a scene with the marks of the
 * findings that show on it.
 */
@NullMarked
package ringout.draw.harness;

import org.jspecify.annotations.NullMarked;
