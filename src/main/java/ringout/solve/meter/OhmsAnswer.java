package ringout.solve.meter;

import java.util.List;
import java.util.Optional;
import ringout.graph.Gap;

/**
 * What an ohmmeter should show with the power off.
 *
 * @param from first point, as the list names it
 * @param to second point
 * @param state name of the state of the aircraft
 * @param pulled plugs pulled in that state and for this measurement
 * @param reading the expected reading with its worst case
 * @param spreadOhm how far it usually is from the expected one: root-sum-square of what each tolerance moves it, in ohm
 * @param routes the ways the current takes, the one that carries most first
 * @param rest the part of the current in no way told
 * @param restThrough parts and node inputs that carry the rest
 * @param inside units between the points when nothing else connects them; what they read is not in the list
 * @param meanings other readings from the smallest up, with the faults that make them
 * @param badContact what the most loaded contact shows when its resistance grows
 * @param unseen faults that leave the reading as it is, so that this measurement does not find them
 * @param notTried number of faults left out because there are too many
 * @param gaps what the list does not give and the reading rests on; such a resistance counts as zero, such a terminator as
 *     off, such a node input as none
 * @param otherStates the readings between the same points in the other states
 */
public record OhmsAnswer(
        String from,
        String to,
        String state,
        List<String> pulled,
        Reading reading,
        double spreadOhm,
        List<Route> routes,
        double rest,
        List<String> restThrough,
        List<String> inside,
        List<Meaning> meanings,
        Optional<BadContact> badContact,
        List<Fault> unseen,
        int notTried,
        List<Gap> gaps,
        List<StateReading> otherStates)
        implements MeterAnswer {
    /**
     * A reading in another state.
     *
     * @param state name of the state
     * @param reading the reading
     * @param same whether a meter cannot tell it from the one in the state asked for
     */
    public record StateReading(String state, Reading reading, boolean same) {}
}
