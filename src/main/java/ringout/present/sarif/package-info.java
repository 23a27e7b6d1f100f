/** Reports in the open form that editors and build servers read: SARIF 2.1.0 (OASIS). */
@NullMarked
package ringout.present.sarif;

import org.jspecify.annotations.NullMarked;
