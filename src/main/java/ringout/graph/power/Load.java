package ringout.graph.power;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringout.model.Datum;
import ringout.model.LoadLaw;
import ringout.model.LoadSpec;
import ringout.model.Unit;
import ringout.model.UnitType;

/**
 * What a unit draws from one of its rails: what is said of the unit, and of its type where the unit says nothing.
 *
 * @param rail rail inside the unit; not known when the unit has one only
 * @param idleA current at rest in A
 * @param averageA average current in A
 * @param averageW average power in W
 * @param peakA peak current in A
 * @param peakS how long the peak lasts in s
 * @param law how the current follows the voltage
 */
public record Load(
        Datum<String> rail,
        Datum<Double> idleA,
        Datum<Double> averageA,
        Datum<Double> averageW,
        Datum<Double> peakA,
        Datum<Double> peakS,
        Datum<LoadLaw> law) {
    private static Load of(LoadSpec own, LoadSpec type) {
        return new Load(
                own.rail().orElse(type.rail()),
                own.idleA().orElse(type.idleA()),
                own.averageA().orElse(type.averageA()),
                own.averageW().orElse(type.averageW()),
                own.peakA().orElse(type.peakA()),
                own.peakS().orElse(type.peakS()),
                own.law().orElse(type.law()));
    }

    /** What a unit draws, rail by rail. */
    public static List<Load> of(Unit unit, UnitType type) {
        List<Load> loads = new ArrayList<>();
        List<LoadSpec> own = new ArrayList<>(unit.loads());
        for (LoadSpec spec : type.loads()) {
            LoadSpec said = own.stream()
                    .filter(load -> !load.rail().isKnown()
                            || load.rail().or("").equals(spec.rail().or("")))
                    .findFirst()
                    .orElse(spec);
            own.remove(said);
            loads.add(of(said, spec));
        }
        own.forEach(spec -> loads.add(of(spec, spec)));
        return List.copyOf(loads);
    }

    /**
     * {@return the average current in A; of a load of constant power, its power over the voltage it is rated at}
     *
     * @param volts voltage of its rail, if known
     */
    public OptionalDouble average(OptionalDouble volts) {
        if (averageA.isKnown()) {
            return OptionalDouble.of(averageA.or(0.0));
        }
        if (averageW.isKnown() && volts.isPresent() && volts.getAsDouble() > 0) {
            return OptionalDouble.of(averageW.or(0.0) / volts.getAsDouble());
        }
        return OptionalDouble.empty();
    }

    /** {@return the peak current in A, never less than a known average} */
    public OptionalDouble peak(OptionalDouble volts) {
        OptionalDouble average = average(volts);
        if (!peakA.isKnown()) {
            return peakA.isNotApplicable() ? average : OptionalDouble.empty();
        }
        return OptionalDouble.of(Math.max(peakA.or(0.0), average.orElse(0)));
    }
}
