package ringout.read.table;

import ringout.model.Datum;

/** Free remarks from several columns of one row become one. */
final class Notes {
    private Notes() {}

    static Object join(Object one, Object other) {
        String first = one instanceof Datum.Known<?> known ? known.value().toString() : "";
        String second = other instanceof Datum.Known<?> known ? known.value().toString() : "";
        return first.isEmpty() || second.isEmpty() ? (first.isEmpty() ? other : one) : Datum.of(first + "; " + second);
    }
}
