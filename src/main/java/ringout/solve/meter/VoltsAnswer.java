package ringout.solve.meter;

import java.util.List;
import java.util.Optional;
import ringout.graph.Trail;
import ringout.model.Lead;
import ringout.solve.power.Assumption;

/**
 * What a voltmeter should show with the power on.
 *
 * @param from first point, where the red lead is put, as the list names it
 * @param to second point, where the black lead is put
 * @param state name of the state of the aircraft
 * @param pulled plugs pulled in that state and for this measurement
 * @param event the event that goes on, if one was asked for
 * @param reading the expected reading: loads at rest, or in the event, packs as measured or else at nominal voltage
 * @param least the case that gives the smallest reading
 * @param most the case that gives the largest reading
 * @param withoutFigure cases in which no voltage can be told, because it collapses
 * @param ways how the voltage comes to each of the two points
 * @param amps current in the last conductor on the way to the first point in A; empty when there is none
 * @param meanings other readings from the smallest up, with the faults that make them, at equal charge of the packs
 * @param unseen faults on the way that leave the reading as it is
 * @param notTried number of faults left out because there are too many
 * @param assumed what the list does not give and was assumed or left out
 */
public record VoltsAnswer(
        String from,
        String to,
        String state,
        List<String> pulled,
        Optional<String> event,
        Reading reading,
        Optional<Extreme> least,
        Optional<Extreme> most,
        List<String> withoutFigure,
        List<Way> ways,
        Optional<Double> amps,
        List<Meaning> meanings,
        List<Fault> unseen,
        int notTried,
        List<Assumption> assumed)
        implements MeterAnswer {
    /**
     * The case that gives an end of the band.
     *
     * @param volts the voltage in V
     * @param packs how far the packs are charged
     * @param loads what the loads do
     * @param tolerance where in their tolerance the regulators are
     */
    public record Extreme(double volts, String packs, String loads, String tolerance) {}

    /**
     * How voltage comes to a point.
     *
     * @param supply whether it is the way from a pack to the point, and not the way back to the pack
     * @param trail pins, leads and parts in order, from the pack
     * @param rows the rows of the list it runs along, in order
     */
    public record Way(boolean supply, Trail trail, List<Lead> rows) {}
}
