package ringout.solve.network;

import java.util.Arrays;

/** Growing row of integers. */
final class IntRow {

    private int[] values = new int[16];
    private int size;

    void add(int value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    int get(int index) {
        return values[index];
    }

    int size() {
        return size;
    }

    void clear() {
        size = 0;
    }

    int[] toArray() {
        return Arrays.copyOf(values, size);
    }

    /** {@return the values in ascending order} */
    int[] toSortedArray() {
        int[] sorted = toArray();
        Arrays.sort(sorted);
        return sorted;
    }
}
