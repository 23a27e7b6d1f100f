package ringout.trace.diagnosis;

import java.util.List;

/**
 * What reading one point several times is worth. A fault fixes what the point shows (with chances q); each reading shows that, or with
 * the reading error e something else. The first reading has the chances of the table. Every further one is told by the first, but for e: it
 * can take away the doubt of having misread, never the doubt of what the fault does. So the weight of any number of readings of one point
 * stays below that of knowing for certain what the point shows.
 */
final class Repeats {
    private Repeats() {}

    /** Chance of a series of readings of one point, given the chances of a single one. */
    static double together(double[] row, double error, List<Integer> outcomes) {
        double first = row[outcomes.get(0)];
        double likelihood = first;
        for (int k = 1; k < outcomes.size(); k++) {
            likelihood *= next(row, error, outcomes.subList(0, k))[outcomes.get(k)];
        }
        return likelihood;
    }

    /** Chances of the next reading of a point after some; with none before, the row itself. */
    static double[] next(double[] row, double error, List<Integer> before) {
        if (before.isEmpty()) {
            return row.clone();
        }
        double[] shown = shown(row, error);
        double sum = 0;
        for (int x = 0; x < shown.length; x++) {
            for (int seen : before) {
                shown[x] *= read(seen, x, error, shown.length);
            }
            sum += shown[x];
        }
        double[] chances = new double[row.length];
        for (int o = 0; o < chances.length; o++) {
            for (int x = 0; x < shown.length; x++) {
                chances[o] += (sum > 0 ? shown[x] / sum : 1.0 / shown.length) * read(o, x, error, shown.length);
            }
        }
        return chances;
    }

    /** What the point really shows: the row with the reading error taken out, as far as the row leaves room for it. */
    private static double[] shown(double[] row, double error) {
        int m = row.length;
        double other = error / (m - 1);
        double[] shown = new double[m];
        double sum = 0;
        for (int x = 0; x < m; x++) {
            shown[x] = Math.max(0, (row[x] - other) / (1 - error - other));
            sum += shown[x];
        }
        for (int x = 0; x < m; x++) {
            shown[x] = sum > 0 ? shown[x] / sum : 1.0 / m;
        }
        return shown;
    }

    private static double read(int seen, int shown, double error, int outcomes) {
        return seen == shown ? 1 - error : error / (outcomes - 1);
    }
}
