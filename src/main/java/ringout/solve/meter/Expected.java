package ringout.solve.meter;

import java.util.List;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.graph.Gap;

/**
 * What a meter should show between two points, without what other readings would mean: cheap enough for every reading on
 * record.
 *
 * @param reading the expected reading with its worst case
 * @param inside units between the points when nothing else connects them; what they read is not in the list
 * @param gaps what the list does not give and a resistance rests on
 */
public record Expected(Reading reading, List<String> inside, List<Gap> gaps) {
    /** With the power off, in ohm. */
    public static Expected ohms(Circuit circuit, int a, int b) {
        Probed probed = new Probed(circuit, a, b);
        return new Expected(probed.reading(), Inside.between(probed), Gaps.of(probed));
    }

    /** With the power on, in V: red lead on the first point; over all charges of the packs, loads and tolerances. */
    public static Expected volts(Circuit circuit, int a, int b) {
        return new Expected(VoltsQuestion.expected(circuit, a, b, Optional.empty()), List.of(), List.of());
    }

    /**
     * Whether a hand-held meter with zeroed leads may show a value when all is well; its own error is allowed for.
     *
     * @param shown what it shows in ohm or V; infinite when it is over range
     */
    public boolean admits(double shown) {
        return Telling.admits(reading, shown);
    }
}
