package ringout.trace.diagnosis;

import java.util.List;

/**
 * A test that can be made and the outcomes it can have.
 *
 * @param name what to do
 * @param hands minutes of hands-on work
 * @param reproof minutes to prove again what the test disturbs
 * @param risk minutes set against what the test may break or hide, a judgement
 * @param openings what must be open for it, by name of {@link Opening}
 * @param outcomes what can be read, at least two
 * @param readingError chance that the reading is not what the point really shows (wrong pin, slipped tip, misread); 3 to 5 % by
 *     common practice, no source. Bounds what reading the same point again can tell
 */
public record Question(
        String name,
        double hands,
        double reproof,
        double risk,
        List<String> openings,
        List<String> outcomes,
        double readingError) {
    /** Reading error when nothing better is known: common practice, no source. */
    public static final double USUAL_ERROR = 0.04;

    /** Refuses negative times, fewer than two outcomes, and an error that would make readings worthless. */
    public Question {
        if (!(hands >= 0 && reproof >= 0 && risk >= 0)) {
            throw new IllegalArgumentException("minutes of " + name + " must be 0 or more");
        }
        openings = List.copyOf(openings);
        outcomes = List.copyOf(outcomes);
        if (outcomes.size() < 2) {
            throw new IllegalArgumentException(name + " has " + outcomes.size() + " outcome, needs two");
        }
        if (!(readingError >= 0 && readingError < 0.5)) {
            throw new IllegalArgumentException(
                    "reading error of " + name + " is " + readingError + ", must be below 0.5");
        }
    }

    /** A test outside, that disturbs nothing. */
    public static Question outside(String name, double minutes, List<String> outcomes) {
        return new Question(name, minutes, 0, 0, List.of(), outcomes, USUAL_ERROR);
    }

    /** Minutes without what has to be opened: hands, re-proof and risk. */
    public double minutes() {
        return hands + reproof + risk;
    }

    /** How much the test disturbs, in minutes of re-proof and risk. */
    public double disturbance() {
        return reproof + risk;
    }
}
