package ringout.solve.rating;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.graph.wire.Ampacity;
import ringout.graph.wire.WireTable;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.shape.Scalars;

/**
 * The charts of FAA AC 43.13-1B: currents of table 11-9, corrected for another ambient; protectors of table 11-3; drops of table
 * 11-6. The tables already stand for a large bundle of which a fifth is loaded: up to six loaded wires take no more off, more take
 * the factor of their number (MIL-STD-975, from memory). Wire thinner than 24 AWG is not in the chart.
 */
public record AircraftChart() implements WireRules {
    private static final double CHART_AMBIENT = 70;
    private static final double[] CLASSES = {105, 150, 200};
    private static final int CHART_LOADED = 6;
    private static final double FULLEST_BUNDLE = 0.5;

    @Override
    public String title() {
        return "aircraft chart";
    }

    @Override
    public String currentSource() {
        return title() + ": FAA AC 43.13-1B, table 11-9";
    }

    @Override
    public String protectorSource() {
        return title() + ": " + WireTable.PROTECTOR_SOURCE;
    }

    @Override
    public Ampacity ampacity(Wire wire) {
        Optional<ChartWire> row = ChartWire.of(wire);
        if (row.isEmpty()) {
            return new Ampacity(0, Double.POSITIVE_INFINITY);
        }
        Lead lead = wire.lead();
        Datum<Integer> loaded = lead.loadedInBundle();
        double bundle = bundle(loaded.or(1));
        double low = lead.insulationC().or(CLASSES[0]);
        double high = lead.insulationC().or(CLASSES[CLASSES.length - 1]);
        double ambient = lead.ambientC().or(CHART_AMBIENT);
        return new Ampacity(
                amps(row.get(), low, ambient) * (loaded.isMissing() ? FULLEST_BUNDLE : bundle),
                amps(row.get(), high, ambient) * bundle);
    }

    /**
     * {@return the current in A of a row of the chart}
     *
     * @param row the row
     * @param insulationC rating of the insulation in degC
     * @param ambientC ambient in degC
     */
    public static double amps(ChartWire row, double insulationC, double ambientC) {
        int column = insulationC >= CLASSES[2] ? 2 : insulationC >= CLASSES[1] ? 1 : 0;
        double listed = new double[] {row.amps105(), row.amps150(), row.amps200()}[column];
        double rated = Math.min(insulationC, CLASSES[column]);
        return listed * Derating.rise(rated - ambientC, CLASSES[column] - CHART_AMBIENT);
    }

    private static double bundle(int loaded) {
        return loaded <= CHART_LOADED ? 1 : Ampacity.bundle(loaded);
    }

    @Override
    public String words(Wire wire) {
        Lead lead = wire.lead();
        String size = wire.awg()
                .known()
                .map(awg -> awg + " AWG")
                .orElseGet(() -> Scalars.number(wire.areaMm2().or(0.0)) + " mm2");
        return size + " by the chart"
                + lead.insulationC()
                        .known()
                        .map(c -> ", insulation " + Scalars.number(c) + " degC")
                        .orElse("")
                + lead.ambientC()
                        .known()
                        .map(c -> ", ambient " + Scalars.number(c) + " degC")
                        .orElse("");
    }

    @Override
    public List<Gap> missing(Wire wire) {
        List<Gap> missing = new ArrayList<>(size(wire, ChartWire.of(wire).isPresent()));
        if (wire.lead().insulationC().isMissing()) {
            missing.add(new Gap("insulation temperature rating", wire.lead().id()));
        }
        if (wire.lead().loadedInBundle().isMissing()) {
            missing.add(
                    new Gap("number of loaded wires in the bundle", wire.lead().id()));
        }
        return List.copyOf(missing);
    }

    private static List<Gap> size(Wire wire, boolean inChart) {
        if (!wire.areaMm2().isKnown()) {
            return List.of(new Gap("wire size", wire.lead().id()));
        }
        return inChart
                ? List.of()
                : List.of(new Gap(
                        "current rating for a size beyond the table",
                        wire.lead().id()));
    }

    @Override
    public Ampacity protector(Wire wire, Protector kind) {
        OptionalDouble amps = ChartProtector.largest(wire, kind);
        return amps.isPresent()
                ? new Ampacity(amps.getAsDouble(), amps.getAsDouble())
                : new Ampacity(0, Double.POSITIVE_INFINITY);
    }

    @Override
    public List<Gap> missing(Wire wire, Protector kind) {
        return size(wire, ChartProtector.largest(wire, kind).isPresent());
    }

    /**
     * {@return the voltage in V that may be lost on the way out and back}
     *
     * @param nominalV nominal voltage of the system in V
     * @param continuous whether the load is a lasting one, or of seconds
     */
    public double allowedDropV(double nominalV, boolean continuous) {
        return VoltageDropTable.allowedV(nominalV, continuous);
    }
}
