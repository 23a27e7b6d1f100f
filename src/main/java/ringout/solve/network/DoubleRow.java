package ringout.solve.network;

import java.util.Arrays;

/** Growing row of numbers. */
final class DoubleRow {

    private double[] values = new double[16];
    private int size;

    void add(double value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size);
        }
        values[size++] = value;
    }

    int size() {
        return size;
    }

    double get(int index) {
        return values[index];
    }

    double[] toArray() {
        return Arrays.copyOf(values, size);
    }
}
