package ringout.trace.choice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Problem;

/** What is claimed against what is so, over many hidden faults, with misreadings and faults that are not in the model. */
class CalibrationTest {
    private static final int AIRCRAFT = 40;
    private static final int FAULTS = 25;
    /** The share claimed does not depend on how tests are chosen, so they are chosen the quick way. */
    private static final Effort QUICK = new Effort(0, 1, Integer.MAX_VALUE, 1, Integer.MAX_VALUE, 0, 0.2);

    private static final double[] AS_IS =
            DoubleStream.generate(() -> 1).limit(Bench.SEGMENTS).toArray();

    @Test
    void whatIsClaimedIsWhatIsSo() {
        Tally all = new Tally();
        for (int aircraft = 0; aircraft < AIRCRAFT; aircraft++) {
            Bench bench = new Bench(new Random(aircraft));
            Adviser adviser = new Adviser(bench.problem(AS_IS), Rules.USUAL, QUICK);
            for (int k = 0; k < FAULTS; k++) {
                Random random = new Random(7919L * aircraft + k);
                all.add(bench.follow(adviser, bench.hide(adviser.problem(), random), random));
            }
        }
        assertTrue(all.claims > AIRCRAFT * FAULTS * 0.9, all::toString);
        assertEquals(all.claimed / all.claims, all.right / all.claims, 0.03, all::toString);
    }

    /** Each prior times something between a third and three, by chance: the technician believes other priors than those of the fleet. */
    @Test
    void otherPriorsSeldomChangeTheRepair() {
        double same = 0;
        double claims = 0;
        Tally other = new Tally();
        for (int aircraft = 0; aircraft < AIRCRAFT; aircraft++) {
            Bench bench = new Bench(new Random(aircraft));
            Random random = new Random(31L + aircraft);
            double[] factor = random.doubles(Bench.SEGMENTS)
                    .map(x -> Math.pow(3, 2 * x - 1))
                    .toArray();
            Problem fleet = bench.problem(AS_IS);
            Problem believed = bench.problem(factor);
            for (int k = 0; k < 10; k++) {
                int fault = bench.hide(fleet, random);
                Bench.End end = bench.follow(adviser(fleet), fault, new Random(random.nextLong()));
                other.add(bench.follow(adviser(believed), fault, new Random(random.nextLong())));
                if (end.isClaim()) {
                    claims++;
                    String first = first(believed, end.seen());
                    same += first.equals(first(fleet, end.seen())) ? 1 : 0;
                }
            }
        }
        double share = same / claims;
        assertTrue(share >= 0.95, () -> "same repair first in " + share);
        assertEquals(other.claimed / other.claims, other.right / other.claims, 0.06, other::toString);
    }

    private static String first(Problem problem, Observed seen) {
        return Belief.of(problem, seen).repairs().get(0).action().name();
    }

    private static Adviser adviser(Problem problem) {
        return new Adviser(problem, Rules.USUAL, QUICK);
    }

    /** Sums over runs. */
    private static final class Tally {
        private double runs;
        private double claims;
        private double claimed;
        private double right;
        private double minutes;

        void add(Bench.End end) {
            runs++;
            minutes += end.minutes();
            if (end.isClaim()) {
                claims++;
                claimed += end.claimed();
                right += end.right() ? 1 : 0;
            }
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    "runs %.0f, claims %.0f, claimed %.4f, right %.4f, minutes %.2f%n",
                    runs,
                    claims,
                    claimed / claims,
                    right / claims,
                    minutes / runs);
        }
    }
}
