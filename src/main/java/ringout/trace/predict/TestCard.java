package ringout.trace.predict;

import java.util.List;
import ringout.trace.candidate.Opening;

/**
 * What a test costs and what to mind, as a sheet prints it.
 *
 * @param id stable identity
 * @param test the test
 * @param title what is done, as an order
 * @param minutes hands-on time; common practice, no source
 * @param opening what has to come off first
 * @param disturbs what must be proved again afterwards, as the list names it
 * @param safety safety lines that apply
 * @param trap what misleads with this test
 * @param outcomes what can come out, told apart by a hand-held meter or the eye
 */
public record TestCard(
        String id,
        FieldTest test,
        String title,
        double minutes,
        Opening opening,
        List<String> disturbs,
        List<String> safety,
        String trap,
        List<String> outcomes) {
    /** Keeps its own copies. */
    public TestCard {
        disturbs = List.copyOf(disturbs);
        safety = List.copyOf(safety);
        outcomes = List.copyOf(outcomes);
    }

    /** Hands-on time and that of the lids, as far as it is told. */
    public double allMinutes() {
        return minutes + opening.minutes().orElse(0);
    }

    @Override
    public String toString() {
        return title;
    }
}
