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

    int removeLast() {
        return values[--size];
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

    /** {@return the values of two ascending rows, each once, ascending} */
    static int[] union(int[] a, int[] b) {
        int[] merged = new int[a.length + b.length];
        int count = 0;
        int i = 0;
        int j = 0;
        while (i < a.length || j < b.length) {
            boolean takeA = j == b.length || (i < a.length && a[i] <= b[j]);
            int value = takeA ? a[i] : b[j];
            i += i < a.length && a[i] == value ? 1 : 0;
            j += j < b.length && b[j] == value ? 1 : 0;
            merged[count++] = value;
        }
        return Arrays.copyOf(merged, count);
    }
}
