package ringout.trace.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import ringout.trace.diagnosis.Problem;

/** Cost of the plans by rule over the exact optimum, on seeded problems of four families. */
public final class PlanRatios {
    /** Highest level tried: 0 information per minute, 1 rollout, 2 rollout of rollouts. */
    static final int LEVELS = 2;

    static final List<String> FAMILIES = List.of("tree of 12", "tree of 16", "chance of 14", "unit of 10");

    private final String name;
    private final List<double[]> ratios = new ArrayList<>();
    private final List<Double> bounds = new ArrayList<>();

    private PlanRatios(String name) {
        this.name = name;
    }

    /** Solves so many problems of each named family. */
    static PlanRatios of(String name, List<String> families, int count) {
        PlanRatios all = new PlanRatios(name);
        for (String family : families) {
            for (int k = 0; k < count; k++) {
                all.add(problem(family, new Random(1000L * FAMILIES.indexOf(family) + k)));
            }
        }
        return all;
    }

    private static Problem problem(String family, Random random) {
        return switch (family) {
            case "tree of 12" -> Plans.supplyTree(12, random);
            case "tree of 16" -> Plans.supplyTree(16, random);
            case "chance of 14" -> Plans.byChance(14, 10, random);
            case "unit of 10" -> Plans.byChance(10, 1, random);
            default -> throw new IllegalArgumentException(family);
        };
    }

    private void add(Problem problem) {
        ExactPlan plan = new ExactPlan(problem, Rules.TO_THE_END);
        double optimum = plan.optimum();
        double[] ratio = new double[LEVELS + 1];
        for (int level = 0; level <= LEVELS; level++) {
            ratio[level] = plan.byLevel(level) / optimum;
        }
        ratios.add(ratio);
        bounds.add(LowerBounds.entropyMinutes(problem) / optimum);
    }

    /** For each problem the ratio of each level. */
    List<double[]> ratios() {
        return ratios;
    }

    /** For each problem the entropy bound over the optimum. */
    List<Double> bounds() {
        return bounds;
    }

    /** Mean of a level. */
    double mean(int level) {
        return ratios.stream().mapToDouble(one -> one[level]).average().orElse(Double.NaN);
    }

    /** The ratio that so much of the problems stay at or below. */
    double quantile(int level, double share) {
        double[] sorted =
                ratios.stream().mapToDouble(one -> one[level]).sorted().toArray();
        return sorted[(int) Math.ceil(share * sorted.length) - 1];
    }

    /** One line a level. */
    String table() {
        StringBuilder lines = new StringBuilder();
        double bound =
                bounds.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
        lines.append(String.format(Locale.ROOT, "%s, %d: entropy bound / optimum %.3f%n", name, ratios.size(), bound));
        for (int level = 0; level <= LEVELS; level++) {
            lines.append(String.format(
                    Locale.ROOT,
                    "  level %d  mean %.4f  p95 %.4f  max %.4f%n",
                    level,
                    mean(level),
                    quantile(level, 0.95),
                    quantile(level, 1)));
        }
        return lines.toString();
    }

    /** Prints all families; the argument is how many problems of each (200 unless said). */
    public static void main(String[] args) {
        int count = Arrays.stream(args).mapToInt(Integer::parseInt).findFirst().orElse(200);
        for (String family : FAMILIES) {
            System.out.print(of(family, List.of(family), count).table());
        }
    }
}
