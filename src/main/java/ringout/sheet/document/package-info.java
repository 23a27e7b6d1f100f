/**
 * A document as data: what its head says, its cautions, texts and tables. It knows nothing of paper, screen or file; writers
 * give it a form.
 */
@NullMarked
package ringout.sheet.document;

import org.jspecify.annotations.NullMarked;
