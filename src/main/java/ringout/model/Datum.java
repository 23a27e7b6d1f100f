package ringout.model;

import java.util.Optional;

/**
 * A value that may be missing, and why. "?", "n/a" and empty are three different things.
 *
 * @param <T> type of the value
 */
public sealed interface Datum<T> {
    /**
     * A known value.
     *
     * @param value the value
     * @param origin where it comes from
     * @param date when it was taken, YYYY-MM-DD, or empty
     */
    record Known<T>(T value, Origin origin, String date) implements Datum<T> {
        @Override
        public boolean equals(Object other) {
            return this == other
                    || (other instanceof Known<?> that
                            && value.equals(that.value)
                            && origin == that.origin
                            && date.equals(that.date));
        }

        @Override
        public int hashCode() {
            return value.hashCode();
        }

        @Override
        public String toString() {
            return "Known[value=" + value + ", origin=" + origin + ", date=" + date + "]";
        }
    }

    /** Marked "?": somebody looked and does not know. */
    record Unknown<T>() implements Datum<T> {
        private static final Unknown<Object> ONE = new Unknown<>();

        @Override
        public boolean equals(Object other) {
            return other instanceof Unknown<?>;
        }

        @Override
        public int hashCode() {
            return 1;
        }

        @Override
        public String toString() {
            return "Unknown[]";
        }
    }

    /** Marked "n/a": there is no such thing here. */
    record NotApplicable<T>() implements Datum<T> {
        private static final NotApplicable<Object> ONE = new NotApplicable<>();

        @Override
        public boolean equals(Object other) {
            return other instanceof NotApplicable<?>;
        }

        @Override
        public int hashCode() {
            return 2;
        }

        @Override
        public String toString() {
            return "NotApplicable[]";
        }
    }

    /** Empty: not asked yet. */
    record NotAsked<T>() implements Datum<T> {
        private static final NotAsked<Object> ONE = new NotAsked<>();

        @Override
        public boolean equals(Object other) {
            return other instanceof NotAsked<?>;
        }

        @Override
        public int hashCode() {
            return 3;
        }

        @Override
        public String toString() {
            return "NotAsked[]";
        }
    }

    /** A value as it stands in the list. */
    static <T> Datum<T> of(T value) {
        return new Known<>(value, Origin.LIST, "");
    }

    /** The mark "?". */
    @SuppressWarnings("unchecked")
    static <T> Datum<T> unknown() {
        return (Datum<T>) Unknown.ONE;
    }

    /** The mark "n/a". */
    @SuppressWarnings("unchecked")
    static <T> Datum<T> notApplicable() {
        return (Datum<T>) NotApplicable.ONE;
    }

    /** An empty field. */
    @SuppressWarnings("unchecked")
    static <T> Datum<T> notAsked() {
        return (Datum<T>) NotAsked.ONE;
    }

    /** Whether there is a value. */
    default boolean isKnown() {
        return this instanceof Known;
    }

    /** Whether it is marked "n/a". */
    default boolean isNotApplicable() {
        return this instanceof NotApplicable;
    }

    /** Whether a value is missing that could be there: "?" or empty. */
    default boolean isMissing() {
        return this instanceof Unknown || this instanceof NotAsked;
    }

    /** Whether there is a value and it equals the given one. */
    default boolean is(T wanted) {
        return this instanceof Known<T> known
                && (known.value() == wanted || known.value().equals(wanted));
    }

    /** The value, or the given one. Use only for display or where a missing value is harmless. */
    default T or(T other) {
        return this instanceof Known<T> known ? known.value() : other;
    }

    /** The value, if there is one. */
    default Optional<T> known() {
        return this instanceof Known<T> k ? Optional.of(k.value()) : Optional.empty();
    }

    /** This datum, or the given one when this is empty; "?" and "n/a" stay. */
    default Datum<T> orElse(Datum<T> other) {
        return this instanceof NotAsked ? other : this;
    }

    /** Where the value comes from; the list itself when nothing else is said. */
    default Origin source() {
        return this instanceof Known<T> known ? known.origin() : Origin.LIST;
    }

    /** Why there is no value, in words. */
    default String absence() {
        if (this instanceof Unknown) {
            return "marked ?";
        }
        return this instanceof NotApplicable ? "marked n/a" : "not given";
    }
}
