package ringout.trace.consistency;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ringout.trace.choice.Adviser;
import ringout.trace.choice.Effort;
import ringout.trace.choice.Option;
import ringout.trace.choice.Rules;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Reading;

/**
 * Minimal conflicts, minimal diagnoses, posteriors and the information of probes of the polybox (de Kleer and Williams 1987; figures derived by full
 * enumeration of the 32 sets of faults with chance 0.01 each, likelihood 1 for all that is not excluded).
 */
class PolyboxTest {
    private static final double DIGITS = 5e-7;

    private final Polybox circuit = new Polybox();
    private final FaultSets sets = FaultSets.of(Polybox.PARTS, Collections.nCopies(5, 0.01), circuit);
    private final Problem problem = sets.problem(List.of("x", "y", "z"), circuit);

    @Test
    void minimalDiagnosesAndConflicts() {
        List<BitSet> diagnoses = MinimalSets.diagnoses(5, 5, circuit::isConsistent);
        assertEquals(new TreeSet<>(List.of("M1", "A1", "M2+M3", "M2+A2")), names(diagnoses));
        List<BitSet> conflicts = MinimalSets.hitting(diagnoses);
        assertEquals(new TreeSet<>(List.of("M1+M2+A1", "M1+M3+A1+A2")), names(conflicts));
        assertEquals(names(diagnoses), names(MinimalSets.hitting(conflicts)));
    }

    @Test
    void posteriorsOfTheSetsAndOfTheParts() {
        assertEquals(27, sets.sets().size());
        Belief belief = Belief.of(problem, Observed.NOTHING);
        assertEquals(0.478026, share(belief, "M1"), DIGITS);
        assertEquals(0.478026, share(belief, "A1"), DIGITS);
        assertEquals(0.0048285, share(belief, "M2+M3"), 5e-8);
        assertEquals(0.0048285, share(belief, "M2+A2"), 5e-8);
        double[] marginals = {0.497635, 0.0196088, 0.0147803, 0.497635, 0.0147803};
        for (int part = 0; part < marginals.length; part++) {
            assertEquals(marginals[part], marginal(belief, part), DIGITS, Polybox.PARTS.get(part));
        }
    }

    @Test
    void informationOfTheProbesAndTheOneToMake() {
        Adviser adviser = new Adviser(problem, new Rules(0.9, 1, 1e-6, 0), Effort.FULL);
        List<Option> ranking = adviser.ranking(Observed.NOTHING);
        assertEquals(List.of(0, 1, 2), ranking.stream().map(Option::question).toList());
        assertEquals(1.0408, ranking.get(0).bits(), 5e-5);
        assertEquals(0.0815, ranking.get(1).bits(), 5e-5);
        assertEquals(0.0474, ranking.get(2).bits(), 5e-5);
    }

    @Test
    void aProbeOfXDecides() {
        assertEquals(
                List.of("4", "6", "another value"), problem.questions().get(0).outcomes());
        assertEquals(0.9606, share(after(0), "M1"), 5e-5);
        assertEquals(0.942, share(after(1), "A1"), 5e-4);
    }

    private Belief after(int outcome) {
        return Belief.of(problem, Observed.NOTHING.with(problem, new Reading(0, outcome)));
    }

    private Set<String> names(List<BitSet> some) {
        return some.stream().map(sets::name).collect(Collectors.toCollection(TreeSet::new));
    }

    private double share(Belief belief, String name) {
        return IntStream.range(0, problem.size())
                .filter(s -> problem.nameOf(s).equals(name))
                .mapToDouble(belief::share)
                .sum();
    }

    private double marginal(Belief belief, int part) {
        return IntStream.range(0, problem.size())
                .filter(s -> sets.sets().get(s).get(part))
                .mapToDouble(belief::share)
                .sum();
    }
}
