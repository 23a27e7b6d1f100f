package ringout.draw.ink;

/** What an area or line is filled with. */
public sealed interface Paint {
    /** Nothing. */
    record Clear() implements Paint {}

    /**
     * One colour.
     *
     * @param hex as {@code #rrggbb}
     */
    record Colour(String hex) implements Paint {}

    /**
     * A hatching of the sheet.
     *
     * @param hatch which
     */
    record Hatched(Hatch hatch) implements Paint {}

    /** {@return nothing} */
    static Paint clear() {
        return new Clear();
    }

    /** {@return one colour} */
    static Paint of(String hex) {
        return new Colour(hex);
    }

    /** {@return a hatching} */
    static Paint of(Hatch hatch) {
        return new Hatched(hatch);
    }
}
