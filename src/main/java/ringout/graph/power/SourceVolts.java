package ringout.graph.power;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.model.Datum;
import ringout.model.PartRating;
import ringout.model.Rail;

/**
 * What a source gives at rest, from its ratings, and which data are missing for it.
 *
 * @param volts plus against minus
 * @param missing data that would make the range known, without the unit's name
 */
record SourceVolts(Volts volts, List<String> missing) {
    private static final double PERCENT = 100;

    /** Cells in series: number of cells times the voltage of an empty, nominal and full cell. */
    static SourceVolts pack(PartRating rating, Optional<Rail> rail) {
        if (rating.cells().isMissing() && rail.isPresent()) {
            return ofRail(rail.get(), "pack");
        }
        List<String> missing = new ArrayList<>();
        double cells = number(rating.cells(), "number of cells", missing).orElse(Double.NaN);
        OptionalDouble empty = number(rating.emptyV(), "voltage of an empty cell", missing);
        OptionalDouble full = number(rating.fullV(), "voltage of a full cell", missing);
        if (Double.isNaN(cells)) {
            return new SourceVolts(Volts.POSITIVE, missing);
        }
        Datum<Double> nominal = rating.nominalV();
        Volts volts = new Volts(
                cells * empty.orElse(0),
                nominal.isKnown() ? OptionalDouble.of(cells * nominal.or(0.0)) : OptionalDouble.empty(),
                full.isPresent() ? cells * full.getAsDouble() : Double.POSITIVE_INFINITY);
        return new SourceVolts(volts, missing);
    }

    /** A regulator: what its output rail says it gives, else the set voltage with its tolerance. */
    static SourceVolts regulator(PartRating rating, Optional<Rail> rail, String railName) {
        Datum<Double> low = rail.map(Rail::minV).orElse(Datum.notAsked());
        Datum<Double> high = rail.map(Rail::maxV).orElse(Datum.notAsked());
        Datum<Double> set = rating.outputV().orElse(rail.map(Rail::nominalV).orElse(Datum.notAsked()));
        double part = rating.tolerancePercent().or(Double.NaN) / PERCENT;
        double bySet = set.or(Double.NaN) * part;
        double least = low.known().orElse(set.or(0.0) - (Double.isNaN(bySet) ? set.or(0.0) : bySet));
        double most = high.known().orElse(Double.isNaN(bySet) ? Double.POSITIVE_INFINITY : set.or(0.0) + bySet);
        boolean open = (!low.isKnown() || !high.isKnown()) && Double.isNaN(bySet);
        OptionalDouble nominal = set.isKnown() ? OptionalDouble.of(set.or(0.0)) : OptionalDouble.empty();
        return new SourceVolts(
                new Volts(least, nominal, most),
                open ? List.of("least and most voltage of output " + railName) : List.of());
    }

    /** An output whose type tells only the rail. */
    static SourceVolts ofRail(Rail rail, String what) {
        boolean open = !rail.minV().isKnown() || !rail.maxV().isKnown();
        OptionalDouble nominal =
                rail.nominalV().isKnown() ? OptionalDouble.of(rail.nominalV().or(0.0)) : OptionalDouble.empty();
        return new SourceVolts(
                new Volts(rail.minV().or(0.0), nominal, rail.maxV().or(Double.POSITIVE_INFINITY)),
                open ? List.of("least and most voltage of " + what + " " + rail.name()) : List.of());
    }

    /** An output nothing is known of but that it is an output. */
    static SourceVolts unknown(String name) {
        return new SourceVolts(Volts.POSITIVE, List.of("voltage of output " + name));
    }

    private static OptionalDouble number(Datum<? extends Number> datum, String what, List<String> missing) {
        Optional<? extends Number> known = datum.known();
        if (known.isEmpty()) {
            missing.add(what);
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(known.get().doubleValue());
    }
}
