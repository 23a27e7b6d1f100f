package ringout.draw.spacing;

import java.util.List;

/**
 * Things side by side, each as near to its wish as their widths allow, and the steps of the leader lines that join the
 * wishes with the things: no two leaders cross or touch.
 */
public final class Spread {
    private static final double TENTH = 10;
    private static final double CLEAR = 1.5;
    private static final int WEIGHT = 1;

    private final double[] middle;

    private Spread(double[] middle) {
        this.middle = middle;
    }

    /**
     * {@return things of given widths, ascending wishes, a clear width between them and limits on both sides; mm}
     * Beyond the right limit if they do not fit.
     */
    public static Spread of(List<Double> wishes, List<Double> widths, double gap, double left, double right) {
        int n = wishes.size();
        if (n == 0) {
            return new Spread(new double[0]);
        }
        int[] distance = new int[n];
        for (int i = 1; i < n; i++) {
            double apart = (widths.get(i - 1) + widths.get(i)) / 2 + gap;
            distance[i] = distance[i - 1] + (int) Math.ceil(apart * TENTH);
        }
        Isotonic row = new Isotonic(distance);
        for (int i = 0; i < n; i++) {
            row.wish(i, (int) Math.round(wishes.get(i) * TENTH), WEIGHT);
        }
        int lowest = (int) Math.ceil((left + widths.get(0) / 2) * TENTH);
        int highest = (int) Math.floor((right - widths.get(n - 1) / 2) * TENTH);
        int[] found = row.solve(lowest, highest);
        double[] middle = new double[n];
        for (int i = 0; i < n; i++) {
            middle[i] = found[i] / TENTH;
        }
        return new Spread(middle);
    }

    /** {@return the middle of a thing, mm} */
    public double middle(int thing) {
        return middle[thing];
    }

    /** {@return where the leader from a wish reaches a thing: straight if the thing lies there, else at its near end} */
    public static double reach(double wish, double middle, double width, double margin) {
        double half = Math.max(0, width / 2 - margin);
        return Math.max(middle - half, Math.min(middle + half, wish));
    }

    /**
     * {@return for each leader the step, counted from the wishes, at which it runs sideways from one place to another}
     * Both lists ascend.
     */
    public static int[] steps(List<Double> from, List<Double> to) {
        int n = from.size();
        int[] step = new int[n];
        for (int i = n - 1; i >= 0; i--) {
            for (int j = i + 1; to.get(i) > from.get(i) && j < n; j++) {
                if (to.get(j) > from.get(j) && from.get(j) <= to.get(i) + CLEAR) {
                    step[i] = Math.max(step[i], step[j] + 1);
                }
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = i - 1; to.get(i) < from.get(i) && j >= 0; j--) {
                if (to.get(j) < from.get(j) && from.get(j) >= to.get(i) - CLEAR) {
                    step[i] = Math.max(step[i], step[j] + 1);
                }
            }
        }
        return step;
    }
}
