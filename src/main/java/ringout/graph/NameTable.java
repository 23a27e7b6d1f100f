package ringout.graph;

import java.util.Arrays;

/**
 * Finds numbers by name, upper and lower case being one, without making a text for the part of a name that is asked about.
 * The first number given to a name stays.
 */
final class NameTable {
    private static final int NONE = -1;
    private static final int SMALLEST = 16;

    private String[] names = new String[SMALLEST];
    private int[] numbers = new int[SMALLEST];
    private int count;

    NameTable() {
        Arrays.fill(names, "");
        Arrays.fill(numbers, NONE);
    }

    /** Gives a number to a name that has none. */
    void add(String name, int number) {
        if (2 * count >= names.length) {
            grow();
        }
        int room = room(name, 0, name.length());
        if (numbers[room] == NONE) {
            names[room] = name;
            numbers[room] = number;
            count++;
        }
    }

    /** The number of a name, or -1. */
    int find(String name) {
        return numbers[room(name, 0, name.length())];
    }

    /** The number of the name that a part of a text is, blanks around it apart; or -1. */
    int find(String text, int start, int end) {
        int first = start;
        int last = end;
        while (last > first && Character.isWhitespace(text.charAt(last - 1))) {
            last--;
        }
        while (first < last && Character.isWhitespace(text.charAt(first))) {
            first++;
        }
        return numbers[room(text, first, last)];
    }

    private void grow() {
        String[] oldNames = names;
        int[] oldNumbers = numbers;
        names = new String[2 * oldNames.length];
        numbers = new int[names.length];
        Arrays.fill(names, "");
        Arrays.fill(numbers, NONE);
        for (int i = 0; i < oldNames.length; i++) {
            if (oldNumbers[i] != NONE) {
                int room = room(oldNames[i], 0, oldNames[i].length());
                names[room] = oldNames[i];
                numbers[room] = oldNumbers[i];
            }
        }
    }

    /** Where a name stands or would stand. */
    private int room(String text, int start, int end) {
        int hash = 0;
        for (int i = start; i < end; i++) {
            hash = 31 * hash + fold(text.charAt(i));
        }
        int room = (hash ^ (hash >>> 16)) & (names.length - 1);
        while (numbers[room] != NONE && !same(names[room], text, start, end)) {
            room = (room + 1) & (names.length - 1);
        }
        return room;
    }

    private static boolean same(String name, String text, int start, int end) {
        int length = end - start;
        return name.length() == length
                && (text.startsWith(name, start) || name.regionMatches(true, 0, text, start, length));
    }

    /** One letter for both cases, as {@link String#regionMatches(boolean, int, String, int, int)} sees them. */
    private static char fold(char letter) {
        if (letter < 0x80) {
            return letter >= 'A' && letter <= 'Z' ? (char) (letter + ('a' - 'A')) : letter;
        }
        return Character.toLowerCase(Character.toUpperCase(letter));
    }
}
