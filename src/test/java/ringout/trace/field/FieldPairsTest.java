package ringout.trace.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.trace.candidate.Candidate;
import ringout.trace.choice.Advice;
import ringout.trace.choice.Adviser;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Explanation;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Pairs;
import ringout.trace.diagnosis.Reading;
import ringout.trace.predict.FieldTest;
import ringout.trace.predict.TestCard;

/** Two faults at once: two units dead in their own way, no single fault of the list has both for its effect. */
class FieldPairsTest {
    private static final Circuit CIRCUIT = SmallAircraft.circuit(SmallAircraft.sample("linewarden"));
    private static final FieldProblem FIELD = FieldProblem.of(CIRCUIT);
    private static final FieldPairs PAIRS = FieldPairs.of(FIELD);
    private static final int GIMBAL = suspect("GMC front end dead");
    private static final int CORRECTION = suspect("COR dead");

    private static int suspect(String title) {
        return IntStream.range(0, FIELD.candidates().size())
                .filter(s -> FIELD.candidates().get(s).title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    private static int likeliest(double[] row) {
        int best = 0;
        for (int o = 1; o < row.length; o++) {
            best = row[o] > row[best] ? o : best;
        }
        return best;
    }

    private static List<Reading> modules(int one, int other) {
        List<Reading> all = new ArrayList<>();
        for (int q = 0; q < FIELD.cards().size(); q++) {
            TestCard card = FIELD.cards().get(q);
            if (card.test() instanceof FieldTest.Answers || card.test() instanceof FieldTest.Light) {
                all.add(new Reading(q, likeliest(PAIRS.row(q, one, other))));
            }
        }
        return all;
    }

    @Test
    void twoFaultsAreOfferedAsAtLeastOneOf() {
        List<Reading> seen = modules(GIMBAL, CORRECTION);
        assertFalse(Explanation.isSingle(FIELD.problem(), seen));
        Pairs pairs = Pairs.of(FIELD.problem(), seen, PAIRS);
        assertFalse(pairs.pairs().isEmpty());
        List<String> repairs = pairs.atLeastOneOf().stream()
                .map(member -> FIELD.problem().suspects().get(member.suspect()).repair())
                .distinct()
                .limit(8)
                .toList();
        assertTrue(
                repairs.contains(FIELD.problem().suspects().get(GIMBAL).repair())
                        || repairs.contains(
                                FIELD.problem().suspects().get(CORRECTION).repair()),
                repairs::toString);
        assertTrue(pairs.pairs().get(0).share() < 0.5, "no pair is claimed");
    }

    /** What the engine would claim of one fault it does not claim of two. */
    @Test
    void noSingleRepairIsClaimedForTwo() {
        Advice advice = Adviser.of(FIELD.problem()).next(new Observed(modules(GIMBAL, CORRECTION), java.util.Set.of()));
        boolean claims = advice instanceof Advice.Repair repair && repair.why() == Advice.Why.COVERS;
        assertFalse(claims, advice::toString);
    }

    /** One repaired, the aircraft looked at anew: the other is an ordinary single fault. */
    @Test
    void afterOneRepairTheOtherIsLeft() {
        List<Reading> seen = modules(GIMBAL, GIMBAL);
        Belief belief = Belief.of(FIELD.problem(), new Observed(seen, java.util.Set.of()));
        assertTrue(Explanation.isSingle(FIELD.problem(), seen));
        assertTrue(belief.share(GIMBAL) > 100 * FIELD.problem().prior(GIMBAL) * 0.1, "" + belief.share(GIMBAL));
    }

    /** A conductor open and a unit dead beyond it: the pair reads as the one that masks the other, the same whichever is named first. */
    @Test
    void aPairIsTheSameEitherWay() {
        Candidate open = FIELD.candidates().get(suspect("W68 pair open"));
        int line = FIELD.candidates().indexOf(open);
        for (String id : List.of("answers GMC", "light COR", "ohms H-L GMC-C1 into lead", "swap unit COR")) {
            int q = FIELD.question(id);
            double[] row = PAIRS.row(q, line, CORRECTION);
            assertEquals(likeliest(row), likeliest(PAIRS.row(q, CORRECTION, line)), id);
        }
        assertEquals(
                "open",
                FIELD.cards()
                        .get(FIELD.question("ohms H-L GMC-C1 into lead"))
                        .outcomes()
                        .get(likeliest(PAIRS.row(FIELD.question("ohms H-L GMC-C1 into lead"), CORRECTION, line))));
        assertEquals(1, PAIRS.together(GIMBAL, CORRECTION));
    }
}
