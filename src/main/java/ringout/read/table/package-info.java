/**
 * Tables as people keep them: comma, semicolon or tab; decimal comma; byte-order marks and old encodings; comments, blank
 * lines, ditto marks and ranges; column heads by field name or trade word. Each cell keeps its row and its head.
 *
 * <p>The way of a file: bytes, {@link ringout.read.table.TextDecoder}, {@link ringout.read.table.Separator},
 * {@link ringout.read.table.Grid}, {@link ringout.read.table.Heads}, {@link ringout.read.table.RowReader}.
 */
@NullMarked
package ringout.read.table;

import org.jspecify.annotations.NullMarked;
