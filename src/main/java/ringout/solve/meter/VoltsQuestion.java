package ringout.solve.meter;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.model.Event;
import ringout.solve.ProbePoint;
import ringout.solve.power.LoadCase;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PackCharge;
import ringout.solve.power.PowerFlow;
import ringout.solve.power.RegulatorFigure;

/** Asks what a voltmeter shows between two points with the power on, and what every other reading would mean. */
public final class VoltsQuestion {
    private static final int MOST_FAULTS = 400;
    private static final int FEWEST_FAULTS = 10;
    private static final int WORK = 400_000;

    private final Circuit circuit;
    private final int a;
    private final int b;
    private final Optional<Event> event;
    private final LoadCase expected;

    private VoltsQuestion(Circuit circuit, int a, int b, Optional<Event> event) {
        this.circuit = circuit;
        this.a = a;
        this.b = b;
        this.event = event;
        LoadCase rest = LoadCase.IDLE.with(PackCharge.MEASURED);
        this.expected = event.map(rest::during).orElse(rest);
    }

    /**
     * The expected voltage and what others would mean.
     *
     * @param circuit the circuit in the state asked for, with all plugs pulled that are pulled for the measurement
     * @param a vertex the red lead is put on
     * @param b vertex the black lead is put on
     * @param event the event that goes on meanwhile, if any
     */
    public static VoltsAnswer ask(Circuit circuit, int a, int b, Optional<Event> event) {
        return new VoltsQuestion(circuit, a, b, event).answer();
    }

    /** The expected voltage alone, with its band. */
    static Reading expected(Circuit circuit, int a, int b, Optional<Event> event) {
        VoltsQuestion question = new VoltsQuestion(circuit, a, b, event);
        Reading reading = question.reading(OperatingPoint.of(circuit, question.expected));
        return banded(reading, question.band(reading));
    }

    private VoltsBand band(Reading reading) {
        return reading instanceof Reading.Volts
                ? VoltsBand.of(circuit, event, at -> reading(at, a, b))
                : VoltsBand.NONE;
    }

    private VoltsAnswer answer() {
        OperatingPoint point = OperatingPoint.of(circuit, expected);
        Reading reading = reading(point);
        VoltsBand band = band(reading);
        SupplyWays ways = new SupplyWays(circuit, a, b);
        List<Telling.Effect> visible = new ArrayList<>();
        List<Fault> unseen = new ArrayList<>();
        List<VoltsFaults.Trial> trials = reading instanceof Reading.Volts ? VoltsFaults.of(ways) : List.of();
        int edges = circuit.live().edgeBound();
        int most = Math.min(trials.size(), Math.max(FEWEST_FAULTS, Math.min(MOST_FAULTS, WORK / (1 + edges))));
        for (VoltsFaults.Trial trial : trials.subList(0, most)) {
            Reading instead = reading(trial.circuit().get());
            if (Telling.same(reading, instead)) {
                unseen.add(trial.fault());
            } else {
                visible.add(new Telling.Effect(trial.fault(), visible.size(), instead));
            }
        }
        return new VoltsAnswer(
                circuit.wiring().name(a),
                circuit.wiring().name(b),
                circuit.state().name(),
                circuit.state().pulled(),
                event.map(Event::name),
                banded(reading, band),
                band.least(),
                band.most(),
                band.withoutFigure(),
                ways.all(),
                amps(point, ways),
                Telling.grouped(visible),
                unseen,
                trials.size() - most,
                point.assumed());
    }

    /** The reading in a circuit that may have been built anew: the points are where their names are now. */
    private Reading reading(Circuit changed) {
        OperatingPoint point = OperatingPoint.of(changed, expected);
        Optional<Reading> overload = point instanceof PowerFlow flow ? overload(flow) : Optional.empty();
        if (overload.isPresent()) {
            return overload.get();
        }
        return changed.wiring() == circuit.wiring()
                ? reading(point, a, b)
                : reading(point, again(changed, a), again(changed, b));
    }

    /** A fault that asks a regulator for more than its peak makes it limit or stop: there is no steady voltage. */
    private static Optional<Reading> overload(PowerFlow flow) {
        for (RegulatorFigure regulator : flow.regulators()) {
            double peak =
                    regulator.source().rail().map(rail -> rail.peakA().or(0.0)).orElse(0.0);
            if (peak > 0 && regulator.outAmps() > peak) {
                return Optional.of(new Reading.Collapse(regulator.source().name(), peak / regulator.outAmps()));
            }
        }
        return Optional.empty();
    }

    private int again(Circuit changed, int vertex) {
        return ProbePoint.find(changed.wiring(), circuit.wiring().name(vertex)).orElse(vertex);
    }

    private Reading reading(OperatingPoint point) {
        return reading(point, a, b);
    }

    private static Reading reading(OperatingPoint point, int red, int black) {
        if (point instanceof PowerFlow flow) {
            OptionalDouble volts = flow.volts(red, black);
            return volts.isPresent()
                    ? new Reading.Volts(volts.getAsDouble(), volts.getAsDouble(), volts.getAsDouble())
                    : new Reading.Floating();
        }
        return point instanceof OperatingPoint.Collapse collapse
                ? new Reading.Collapse(collapse.limiting(), collapse.margin())
                : new Reading.Unsettled();
    }

    private static Reading banded(Reading reading, VoltsBand band) {
        if (!(reading instanceof Reading.Volts at)) {
            return reading;
        }
        double least = band.least().map(VoltsAnswer.Extreme::volts).orElse(at.volts());
        double most = band.most().map(VoltsAnswer.Extreme::volts).orElse(at.volts());
        return new Reading.Volts(at.volts(), Math.min(at.volts(), least), Math.max(at.volts(), most));
    }

    private Optional<Double> amps(OperatingPoint point, SupplyWays ways) {
        return point instanceof PowerFlow flow
                ? ways.lastConductor().map(edge -> Math.abs(flow.amps(edge)))
                : Optional.empty();
    }
}
