package ringout.model.edit;

import java.util.function.Function;

/**
 * Something, or what is wrong.
 *
 * @param <T> what it is when nothing is wrong
 */
public sealed interface Told<T> {
    /**
     * Nothing is wrong.
     *
     * @param value what it is
     */
    record Right<T>(T value) implements Told<T> {}

    /**
     * Something is wrong.
     *
     * @param why what
     * @param hint how to mend it, or the nearest name; may be empty
     */
    record Wrong<T>(String why, String hint) implements Told<T> {}

    /** Nothing is wrong. */
    static <T> Told<T> right(T value) {
        return new Right<>(value);
    }

    /** Something is wrong. */
    static <T> Told<T> wrong(String why, String hint) {
        return new Wrong<>(why, hint);
    }

    /** Goes on with the value, when there is one. */
    default <S> Told<S> then(Function<T, Told<S>> next) {
        if (this instanceof Wrong<T> wrong) {
            return new Wrong<>(wrong.why(), wrong.hint());
        }
        return next.apply(((Right<T>) this).value());
    }
}
