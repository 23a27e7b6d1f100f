package ringout.draw.matrix;

import ringout.draw.scene.BadgeKind;

/** What a cell says. */
public sealed interface Glyph {
    /** Nothing: the case does not arise. */
    record None() implements Glyph {}

    /** Row and column are the same thing. */
    record Self() implements Glyph {}

    /** The thing of the column is dead. */
    record Dead() implements Glyph {}

    /** Nothing changes. */
    record Same() implements Glyph {}

    /** It was tried and no harm was found. */
    record NoHarm() implements Glyph {}

    /** It was not tried: cannot tell. */
    record Open() implements Glyph {}

    /**
     * What comes of it.
     *
     * @param kind the shape
     * @param letter in it
     * @param words the finding in words
     */
    record Result(BadgeKind kind, String letter, String words) implements Glyph {}
}
