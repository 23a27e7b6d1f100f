package ringout.trace.choice;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import ringout.trace.diagnosis.Observed;
import ringout.trace.diagnosis.Opening;
import ringout.trace.diagnosis.Problem;
import ringout.trace.diagnosis.Question;
import ringout.trace.diagnosis.Reading;
import ringout.trace.diagnosis.Suspect;

/**
 * A gimbal is silent on its bus, its light steady, the other four units alive. Eight suspects, eight tests, chances and priors by judgement,
 * the figures derived from them computed by hand and again by machine: the trade handbook's worked case (common practice, no source).
 */
final class SilentGimbal {
    static final int OHMS = 0;
    static final int OHMS_INTO_LEAD = 1;
    static final int PLATE = 6;
    static final int SETTINGS = 7;
    static final int VOLTS_OF_WIRES = 8;
    static final String LID = "top plate";

    private static final double[] PRIOR = {.34, .10, .05, .14, .12, .05, .15, .05};
    private static final double[][][] CHANCE = {
        {{.06, .94}, {.03, .97}, {.97, .03}, {.95, .05}, {.98, .02}, {.98, .02}, {.98, .02}, {.05, .95}},
        {{.06, .94}, {.03, .97}, {.97, .03}, {.97, .03}, {.97, .03}, {.97, .03}, {.97, .03}, {.05, .95}},
        {{.05, .95}, {.05, .95}, {.03, .97}, {.02, .98}, {.96, .04}, {.02, .98}, {.10, .90}, {.90, .10}},
        {{.98, .02}, {.98, .02}, {.98, .02}, {.98, .02}, {.98, .02}, {.98, .02}, {.10, .90}, {.98, .02}},
        {
            {.06, .01, .93}, {.02, .01, .97}, {.03, .95, .02}, {.94, .02, .04},
            {.96, .02, .02}, {.94, .02, .04}, {.94, .02, .04}, {.05, .01, .94}
        },
        {{.04, .96}, {.01, .99}, {.02, .98}, {.96, .04}, {.90, .10}, {.93, .07}, {.15, .85}, {.02, .98}},
        {{.60, .40}, {.95, .05}, {.25, .75}, {.01, .99}, {.01, .99}, {.01, .99}, {.01, .99}, {.05, .95}},
        {{.98, .02}, {.98, .02}, {.98, .02}, {.85, .15}, {.05, .95}, {.04, .96}, {.95, .05}, {.98, .02}},
        // Volts at each wire of the pulled lead: nothing where it is broken before the break, the bus voltage on both
        // wires where the lead
        // is sound to a live bus, about 3.3 V on one wire at an idle serial socket.
        {
            {.02, .05, .93}, {.95, .03, .02}, {.02, .96, .02}, {.02, .96, .02},
            {.02, .96, .02}, {.02, .96, .02}, {.02, .96, .02}, {.02, .15, .83}
        },
    };

    private SilentGimbal() {}

    /** The eight tests of the printed table. */
    static Problem printed(double unknown) {
        return problem(8, unknown);
    }

    /** With the ninth. */
    static Problem withVoltsOfWires(double unknown) {
        return problem(9, unknown);
    }

    private static Problem problem(int tests, double unknown) {
        List<Suspect> suspects = List.of(
                suspect(0, "W68 pair open", "replace W68", 8, LID),
                suspect(1, "W68 in the AUX socket of LOG", "move W68 to C2 of LOG", 2, LID),
                suspect(2, "H and L swapped in W68", "swap two pins of W68", 10),
                suspect(3, "GMC bus front end dead", "replace GMC", 25),
                suspect(4, "GMC and LOG share an address", "set the address of GMC", 6),
                suspect(5, "GMC at another bit rate", "set the rate of GMC", 6),
                suspect(6, "12 V contact of GMC of high resistance", "new contact at GMC", 15),
                suspect(7, "pass-through of LOG open inside", "replace LOG", 25, LID));
        List<Question> questions = List.of(
                        Question.outside(
                                "ohms H to L at FC, all mated, power off", 3, List.of("about 60", "about 120")),
                        Question.outside("pull W68 at GMC, ohms into the lead", 6, List.of("about 120", "open")),
                        Question.outside("power on with the bus of LOG bypassed", 8, List.of("appears", "silent")),
                        Question.outside("12 V at the mated GMC plug", 5, List.of("11.4 or more", "less")),
                        Question.outside("sign of V(H) - V(L) at GMC", 4, List.of("positive", "negative", "none")),
                        Question.outside("swap GMC", 25, List.of("works", "silent")),
                        new Question(
                                "look at and tug W68 at LOG", 0, 0, 0, List.of(LID), List.of("seen", "nothing"), 0.04),
                        Question.outside("settings of GMC over its service port", 4, List.of("as record", "differ")),
                        Question.outside(
                                "volts at each wire of the pulled W68",
                                5,
                                List.of("3.3 on one wire", "2.5 on both", "nothing")))
                .subList(0, tests);
        return new Problem(suspects, questions, List.of(new Opening(LID, 12)), unknown, q -> CHANCE[q]);
    }

    private static Suspect suspect(int number, String name, String repair, double minutes, String... openings) {
        return new Suspect(name, PRIOR[number], repair, minutes, List.of(openings));
    }

    static Observed ohms(Problem problem, int outcome) {
        return Observed.NOTHING.with(problem, new Reading(OHMS, outcome));
    }

    /** Shares of the suspects in per cent, for messages. */
    static String percent(ringout.trace.diagnosis.Belief belief) {
        return IntStream.range(0, belief.problem().size())
                .mapToObj(s -> Math.round(100 * belief.share(s)) + "")
                .collect(Collectors.joining(" "));
    }
}
