package ringout.trace.campaign;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Rows;
import ringout.trace.diagnosis.Suspect;

/** The same suspects and tests with other weights. */
final class Priors {
    private Priors() {}

    /** Weights times something between a third and three, by chance, evenly on a scale of ratios. */
    static double[] factors(int count, Random random) {
        return random.doubles(count).map(x -> Math.pow(3, 2 * x - 1)).toArray();
    }

    /** A problem with each weight times a factor by number of the suspect; 0 takes a suspect out of the list. */
    static Problem times(Problem listed, IntToDoubleFunction factor) {
        List<Suspect> suspects = new ArrayList<>();
        for (int s = 0; s < listed.suspects().size(); s++) {
            Suspect one = listed.suspects().get(s);
            suspects.add(new Suspect(
                    one.name(),
                    one.weight() * factor.applyAsDouble(s),
                    one.repair(),
                    one.repairMinutes(),
                    one.openings()));
        }
        List<Opening> openings = new ArrayList<>();
        listed.questions().stream()
                .map(Question::openings)
                .flatMap(List::stream)
                .distinct()
                .forEach(name -> openings.add(opening(listed, name)));
        suspects.stream()
                .map(Suspect::openings)
                .flatMap(List::stream)
                .distinct()
                .forEach(name -> openings.add(opening(listed, name)));
        double unknown = listed.hasUnknown() ? listed.prior(listed.size() - 1) : 0;
        return new Problem(suspects, listed.questions(), openings, unknown, q -> table(listed.rows(q)));
    }

    private static Opening opening(Problem listed, String name) {
        return new Opening(name, listed.minutesToOpen(List.of(name), java.util.Set.of()));
    }

    private static double[][] table(Rows rows) {
        double[][] table = new double[rows.suspects()][rows.outcomes()];
        for (int s = 0; s < table.length; s++) {
            for (int o = 0; o < rows.outcomes(); o++) {
                table[s][o] = rows.likelihood(s, o);
            }
        }
        return table;
    }
}
