/**
 * The last stage of a drawing before it is text: ink on a sheet. A {@link ringout.draw.ink.StyledSheet} says what is
 * drawn where, how thick, in which colour and hatching, and what each part stands for; a writer only spells it out.
 */
@NullMarked
package ringout.draw.ink;

import org.jspecify.annotations.NullMarked;
