package ringout.read.json;

import org.jspecify.annotations.Nullable;
import ringout.model.Datum;

/**
 * Data seen lately, by the letters or the number they were read from: lists say the same things over and over, and a
 * value found here is neither parsed nor held again. Never wrong: a hit is compared in full.
 */
final class Recent {
    private static final int SIZE = 1 << 12;

    private final @Nullable Class<?>[] types = new Class<?>[SIZE];
    private final @Nullable String[] texts = new String[SIZE];
    private final @Nullable Datum<?>[] data = new Datum<?>[SIZE];
    private final @Nullable Datum<?>[] numbers = new Datum<?>[SIZE];

    /** The datum of a type read from these letters, or null. */
    @Nullable
    Datum<?> get(Class<?> type, char[] letters, int start, int length) {
        int slot = slot(letters, start, length);
        String text = texts[slot];
        if (text == null || types[slot] != type || text.length() != length) {
            return null;
        }
        for (int i = 0; i < length; i++) {
            if (text.charAt(i) != letters[start + i]) {
                return null;
            }
        }
        return data[slot];
    }

    /** Remembers the datum of a text. */
    void put(Class<?> type, String text, Datum<?> datum) {
        int slot = slot(text.toCharArray(), 0, text.length());
        types[slot] = type;
        texts[slot] = text;
        data[slot] = datum;
    }

    /** The datum of a number, the same object for equal numbers as long as it is remembered. */
    Datum<?> number(double value) {
        long bits = Double.doubleToLongBits(value);
        int slot = (int) ((bits ^ (bits >>> 32) ^ (bits >>> 44)) & (SIZE - 1));
        Datum<?> known = numbers[slot];
        if (known instanceof Datum.Known<?> same && same.value() instanceof Double number && number == value) {
            return known;
        }
        Datum<?> datum = Datum.of(value);
        numbers[slot] = datum;
        return datum;
    }

    private static int slot(char[] letters, int start, int length) {
        int hash = length;
        for (int i = start; i < start + length; i++) {
            hash = 31 * hash + letters[i];
        }
        return (hash ^ (hash >>> 12)) & (SIZE - 1);
    }
}
