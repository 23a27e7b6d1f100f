/**
 * Sheets of small drawings: each is a card that knows its size and its ink; cards are put side by side in rows, in their
 * order, and never cut or shrunk.
 */
@NullMarked
package ringout.draw.card;

import org.jspecify.annotations.NullMarked;
