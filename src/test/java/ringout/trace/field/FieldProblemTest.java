package ringout.trace.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.graph.Circuit;
import ringout.graph.SmallAircraft;
import ringout.graph.Wiring;
import ringout.trace.diagnosis.Belief;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Reading;

class FieldProblemTest {
    private static final Circuit CIRCUIT =
            Circuit.all(Wiring.of(SmallAircraft.sample("linewarden"))).get(0);
    private static final FieldProblem FIELD = FieldProblem.of(CIRCUIT);

    private static Observed then(Observed before, String test, String outcome) {
        int question = FIELD.question(test);
        int number = FIELD.cards().get(question).outcomes().indexOf(outcome);
        return before.with(FIELD.problem(), new Reading(question, number));
    }

    private static double share(Belief belief, String title) {
        double sum = 0;
        for (int s = 0; s < FIELD.candidates().size(); s++) {
            sum += FIELD.candidates().get(s).title().equals(title) ? belief.share(s) : 0;
        }
        return sum;
    }

    /** The worked case of the trade: silent, lit, the others alive; 120 ohm speaks for the lead, volts at its wires for which. */
    @Test
    void readingsMoveTheBeliefWhereTheyShould() {
        Observed seen = then(Observed.NOTHING, "answers GMC", "silent");
        seen = then(seen, "light GMC", "lit");
        for (String other : List.of("GN1", "IMU", "LOG", "PMON")) {
            seen = then(seen, "answers " + other, "answers");
        }
        Belief before = Belief.of(FIELD.problem(), seen);
        Belief open = Belief.of(FIELD.problem(), then(seen, "ohms H-L GMC-C1 into lead", "open"));
        assertTrue(share(open, "W68 pair open") > 2 * share(before, "W68 pair open"));
        assertTrue(share(open, "GMC front end dead") < share(before, "GMC front end dead") / 5);
        assertEquals(
                "W68",
                FIELD.candidates().get(open.ranked().get(0)).rows().stream()
                        .findFirst()
                        .orElse("none"));
    }

    private static String shows(String title, String test) {
        int question = FIELD.question(test);
        int suspect =
                FIELD.candidates().stream().map(one -> one.title()).toList().indexOf(title);
        var chances = FIELD.problem().rows(question);
        int best = 0;
        for (int o = 1; o < chances.outcomes(); o++) {
            best = chances.likelihood(suspect, o) > chances.likelihood(suspect, best) ? o : best;
        }
        return FIELD.cards().get(question).outcomes().get(best);
    }

    /** Ringing out a pulled lead finds what is wrong in it and nothing of how it is plugged: common practice, no source. */
    @Test
    void ringingOutTellsTheLeadFromItsPlugs() {
        assertEquals("open", shows("W68 pair open", "ring out W68"));
        assertEquals("touching", shows("W66 H and L touch", "ring out W66"));
        assertEquals("as listed", shows("GMC-C1 not seated", "ring out W68"));
        assertEquals("as listed", shows("W66 H and L touch", "ring out W68"));
        assertEquals("as listed", shows("GMC front end dead", "ring out W68"));
    }

    /** Cleaning the contacts of a plug seats it: one action; putting it into its own socket is another. */
    @Test
    void workOnOnePlugIsOneAction() {
        long actions = FIELD.problem().repairs().stream()
                .filter(one -> one.name().contains("GMC-C1"))
                .count();
        assertEquals(1, actions);
    }

    /** A sound module speaks only a little against something not in the model, and not as a toss of a coin. */
    @Test
    void theUnknownLeavesMostModulesSound() {
        int question = FIELD.question("answers GN1");
        var rows = FIELD.problem().rows(question);
        int answers = FIELD.cards().get(question).outcomes().indexOf("answers");
        assertTrue(rows.likelihood(FIELD.problem().size() - 1, answers) > 0.75);
    }
}
