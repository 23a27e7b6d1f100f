package ringout.model.edit;

import ringout.text.Span;

/** One change of an aircraft. Made from text by {@link EditLine}, applied by {@link Edits}. */
public sealed interface Edit {
    /** Where the change is written. */
    Span at();

    /** What it changes: a field for {@link Set}, a record for {@link Remove}, a list for {@link Add}. */
    Path path();

    /**
     * Gives a field another value, or none.
     *
     * @param at where the change is written
     * @param path the field
     * @param value the value as the model holds it: a datum, a scalar or a list
     */
    record Set(Span at, Path path, Object value) implements Edit {}

    /**
     * Takes a record out of its list.
     *
     * @param at where the change is written
     * @param path the record
     */
    record Remove(Span at, Path path) implements Edit {}

    /**
     * Puts a record at the end of a list.
     *
     * @param at where the change is written
     * @param path the list
     * @param item the model record
     */
    record Add(Span at, Path path, Object item) implements Edit {}
}
